package plainsward.packing;

import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Has the lambdas of one class made in another. */
final class LambdaRewriter {
  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";

  private final ClassNode node;
  private final LambdaClass into;

  private LambdaRewriter(ClassNode node, LambdaClass into) {
    this.node = node;
    this.into = into;
  }

  /** Replaces every lambda of a class by one of {@code into}; whether there is any. */
  static boolean rewrite(ClassNode node, LambdaClass into) {
    return new LambdaRewriter(node, into).rewrite();
  }

  private boolean rewrite() {
    boolean any = false;
    for (MethodNode method : node.methods) {
      for (AbstractInsnNode instruction : method.instructions.toArray()) {
        if (instruction instanceof InvokeDynamicInsnNode call && isLambda(call)) {
          method.instructions.set(call, replaced(call));
          any = true;
        }
      }
    }
    return any;
  }

  private static boolean isLambda(InvokeDynamicInsnNode call) {
    return call.bsm.getOwner().equals(FACTORY) && call.bsm.getName().equals("metafactory");
  }

  private AbstractInsnNode replaced(InvokeDynamicInsnNode call) {
    LambdaSite site =
        new LambdaSite(
            call.name,
            Type.getMethodType(call.desc),
            (Type) call.bsmArgs[0],
            (Handle) call.bsmArgs[1],
            (Type) call.bsmArgs[2]);
    int number = into.add(site);
    return site.captured().length == 0
        ? new FieldInsnNode(
            Opcodes.GETSTATIC, into.name(), LambdaClass.only(number), site.descriptor())
        : new MethodInsnNode(
            Opcodes.INVOKESTATIC, into.name(), LambdaClass.maker(number), call.desc, false);
  }
}
