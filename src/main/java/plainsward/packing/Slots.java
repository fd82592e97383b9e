package plainsward.packing;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;

/** The fields in which lambdas of one class keep what they capture, used by all of them. */
final class Slots {
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");

  private final Map<String, Type> all = new LinkedHashMap<>();

  /** Makes sure that there are fields for all of these. */
  void fit(Type[] captured) {
    Map<Type, Integer> count = new HashMap<>();
    for (Type type : captured) {
      Type kind = kind(type);
      all.putIfAbsent(name(kind, count.merge(kind, 1, Integer::sum)), kind);
    }
  }

  private static String name(Type kind, int number) {
    return (kind.equals(OBJECT) ? "a" : kind.getClassName()) + number;
  }

  /** The type of the field for a type: what is smaller than an int goes as one. */
  static Type kind(Type type) {
    return switch (type.getSort()) {
      case Type.BOOLEAN, Type.BYTE, Type.CHAR, Type.SHORT, Type.INT -> Type.INT_TYPE;
      case Type.LONG, Type.FLOAT, Type.DOUBLE -> type;
      default -> OBJECT;
    };
  }

  /** The fields for these, each with the place of what it holds. */
  Map<String, Integer> places(Type[] captured) {
    Map<String, Integer> places = new HashMap<>();
    Map<Type, Integer> count = new HashMap<>();
    for (int i = 0; i < captured.length; i++) {
      Type kind = kind(captured[i]);
      places.put(name(kind, count.merge(kind, 1, Integer::sum)), i);
    }
    return places;
  }

  /** Each field by name and type, in the constructor's order. */
  void each(BiConsumer<String, Type> take) {
    all.forEach(take);
  }

  /** The constructor's type: a number and all fields. */
  String constructor() {
    StringBuilder type = new StringBuilder("(I");
    all.values().forEach(type::append);
    return type.append(")V").toString();
  }

  /** The stack words of all fields. */
  int words() {
    int words = 0;
    for (Type type : all.values()) {
      words += type.getSize();
    }
    return words;
  }

  /** What stands in a field that a lambda does not use. */
  static void pushNothing(GeneratorAdapter code, Type type) {
    switch (type.getSort()) {
      case Type.INT -> code.push(0);
      case Type.LONG -> code.push(0L);
      case Type.FLOAT -> code.push(0f);
      case Type.DOUBLE -> code.push(0d);
      default -> code.visitInsn(Opcodes.ACONST_NULL);
    }
  }
}
