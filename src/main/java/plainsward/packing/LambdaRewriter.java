package plainsward.packing;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Replaces the lambdas of one class by classes. */
final class LambdaRewriter {
  /** What the names of the classes made have in them. */
  static final String MARK = "$$Lambda";

  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";

  private final ClassNode node;
  private final List<ClassNode> made = new ArrayList<>();

  LambdaRewriter(ClassNode node) {
    this.node = node;
  }

  /** The classes made, without their nest's host; the class itself calls them from now on. */
  List<ClassNode> rewrite() {
    for (MethodNode method : node.methods) {
      for (AbstractInsnNode instruction : method.instructions.toArray()) {
        if (instruction instanceof InvokeDynamicInsnNode call && isLambda(call)) {
          method.instructions.set(call, replaced(call));
        }
      }
    }
    return made;
  }

  private static boolean isLambda(InvokeDynamicInsnNode call) {
    return call.bsm.getOwner().equals(FACTORY) && call.bsm.getName().equals("metafactory");
  }

  private AbstractInsnNode replaced(InvokeDynamicInsnNode call) {
    LambdaSite site =
        new LambdaSite(
            node.name + MARK + made.size(),
            call.name,
            Type.getMethodType(call.desc),
            (Type) call.bsmArgs[0],
            (Handle) call.bsmArgs[1],
            (Type) call.bsmArgs[2]);
    made.add(new LambdaClass(site).make());
    return site.captured().length == 0
        ? new FieldInsnNode(Opcodes.GETSTATIC, site.name(), LambdaClass.ONLY, site.descriptor())
        : new MethodInsnNode(Opcodes.INVOKESTATIC, site.name(), LambdaClass.MAKE, call.desc, false);
  }
}
