package plainsward.packing;

import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;

/**
 * Turns a value on the stack from one type into another as {@link
 * java.lang.invoke.LambdaMetafactory} says: by casting, boxing, unboxing and widening.
 */
final class Adapting {
  private Adapting() {}

  /** An argument that comes by the erased type and is of the exact one. */
  static void argument(GeneratorAdapter code, Type erased, Type exact, Type wanted) {
    if (!isPlain(erased)) {
      cast(code, exact);
    }
    convert(code, exact, wanted);
  }

  /** A result, to be of the exact type and to leave by the erased one. */
  static void result(GeneratorAdapter code, Type given, Type exact, Type erased) {
    if (erased.getSort() == Type.VOID) {
      drop(code, given);
    } else {
      convert(code, given, isPlain(exact) ? exact : erased);
    }
  }

  private static void drop(GeneratorAdapter code, Type given) {
    if (given.getSize() == 2) {
      code.pop2();
    } else if (given.getSize() == 1) {
      code.pop();
    }
  }

  private static void convert(GeneratorAdapter code, Type from, Type to) {
    if (isPlain(from) && isPlain(to)) {
      code.cast(from, to);
    } else if (isPlain(from)) {
      code.valueOf(from);
    } else if (isPlain(to)) {
      Type inside = unboxed(from);
      code.unbox(inside == null ? to : inside);
      code.cast(inside == null ? to : inside, to);
    } else if (!from.equals(to)) {
      cast(code, to);
    }
  }

  private static void cast(GeneratorAdapter code, Type to) {
    if (!to.getInternalName().equals("java/lang/Object")) {
      code.checkCast(to);
    }
  }

  private static boolean isPlain(Type type) {
    return type.getSort() < Type.ARRAY;
  }

  /** The plain type of a wrapper, or null where it is none. */
  private static Type unboxed(Type wrapper) {
    return switch (wrapper.getInternalName()) {
      case "java/lang/Boolean" -> Type.BOOLEAN_TYPE;
      case "java/lang/Character" -> Type.CHAR_TYPE;
      case "java/lang/Byte" -> Type.BYTE_TYPE;
      case "java/lang/Short" -> Type.SHORT_TYPE;
      case "java/lang/Integer" -> Type.INT_TYPE;
      case "java/lang/Long" -> Type.LONG_TYPE;
      case "java/lang/Float" -> Type.FLOAT_TYPE;
      case "java/lang/Double" -> Type.DOUBLE_TYPE;
      default -> null;
    };
  }
}
