package plainsward.packing;

import java.util.List;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;
import org.objectweb.asm.tree.RecordComponentNode;

/** Writes out the equality and the hash code of a record, where javac left them to be linked. */
final class RecordRewriter {
  private static final String LINKER = "java/lang/runtime/ObjectMethods";

  private final String owner;
  private final List<RecordComponentNode> components;

  private RecordRewriter(ClassNode node) {
    this.owner = node.name;
    this.components = node.recordComponents;
  }

  /** Rewrites both methods, where the class is a record and has them from javac. */
  static void rewrite(ClassNode node) {
    if (node.recordComponents == null) {
      return;
    }
    RecordRewriter rewriter = new RecordRewriter(node);
    for (MethodNode method : node.methods) {
      if (isLinked(method) && method.name.equals("hashCode")) {
        clear(method);
        rewriter.hashCode(method);
      } else if (isLinked(method) && method.name.equals("equals")) {
        clear(method);
        rewriter.equality(method);
      }
    }
  }

  private static boolean isLinked(MethodNode method) {
    for (AbstractInsnNode instruction : method.instructions) {
      if (instruction instanceof InvokeDynamicInsnNode call && call.bsm.getOwner().equals(LINKER)) {
        return true;
      }
    }
    return false;
  }

  private static void clear(MethodNode method) {
    method.instructions.clear();
    method.localVariables = null;
  }

  /** As the JVM does it: 31 times what came before and the component's own. */
  private void hashCode(MethodVisitor code) {
    code.visitInsn(Opcodes.ICONST_0);
    for (RecordComponentNode component : components) {
      code.visitIntInsn(Opcodes.BIPUSH, 31);
      code.visitInsn(Opcodes.IMUL);
      load(code, 0, component);
      Type type = Type.getType(component.descriptor);
      String descriptor = (isPlain(type) ? "(" + type : "(Ljava/lang/Object;") + ")I";
      code.visitMethodInsn(Opcodes.INVOKESTATIC, helper(type), "hashCode", descriptor, false);
      code.visitInsn(Opcodes.IADD);
    }
    code.visitInsn(Opcodes.IRETURN);
    code.visitMaxs(4, 1);
  }

  private void equality(MethodVisitor code) {
    Label other = new Label();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitVarInsn(Opcodes.ALOAD, 1);
    code.visitJumpInsn(Opcodes.IF_ACMPNE, other);
    answer(code, Opcodes.ICONST_1);
    landing(code, other);
    code.visitVarInsn(Opcodes.ALOAD, 1);
    code.visitTypeInsn(Opcodes.INSTANCEOF, owner);
    unless(code, Opcodes.IFNE);
    for (RecordComponentNode component : components) {
      load(code, 0, component);
      load(code, 1, component);
      Type type = Type.getType(component.descriptor);
      boolean plain = isPlain(type);
      code.visitMethodInsn(
          Opcodes.INVOKESTATIC,
          helper(type),
          plain ? "compare" : "equals",
          plain ? "(" + type + type + ")I" : "(Ljava/lang/Object;Ljava/lang/Object;)Z",
          false);
      unless(code, plain ? Opcodes.IFEQ : Opcodes.IFNE);
    }
    answer(code, Opcodes.ICONST_1);
    code.visitMaxs(4, 2);
  }

  /** Goes on where the jump is taken, else they are not equal. */
  private static void unless(MethodVisitor code, int jump) {
    Label on = new Label();
    code.visitJumpInsn(jump, on);
    answer(code, Opcodes.ICONST_0);
    landing(code, on);
  }

  private static void answer(MethodVisitor code, int constant) {
    code.visitInsn(constant);
    code.visitInsn(Opcodes.IRETURN);
  }

  private static void landing(MethodVisitor code, Label label) {
    code.visitLabel(label);
    code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
  }

  private void load(MethodVisitor code, int local, RecordComponentNode component) {
    code.visitVarInsn(Opcodes.ALOAD, local);
    if (local > 0) {
      code.visitTypeInsn(Opcodes.CHECKCAST, owner);
    }
    code.visitFieldInsn(Opcodes.GETFIELD, owner, component.name, component.descriptor);
  }

  private static boolean isPlain(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  private static String helper(Type type) {
    return switch (type.getSort()) {
      case Type.BOOLEAN -> "java/lang/Boolean";
      case Type.CHAR -> "java/lang/Character";
      case Type.BYTE -> "java/lang/Byte";
      case Type.SHORT -> "java/lang/Short";
      case Type.INT -> "java/lang/Integer";
      case Type.LONG -> "java/lang/Long";
      case Type.FLOAT -> "java/lang/Float";
      case Type.DOUBLE -> "java/lang/Double";
      default -> "java/util/Objects";
    };
  }
}
