package plainsward.packing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/** Makes a class that holds bytes as texts. */
final class TextClass {
  /** A letter of a text in a class file may take two bytes, and 65,535 are the most. */
  private static final int PIECE = 32_000;

  private static final Type TEXT = Type.getType(String.class);

  private TextClass() {}

  /** The class of this internal name whose method {@code pieces(n)} gives the nth as letters. */
  static byte[] of(String name, List<byte[]> all) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES);
    writer.visit(
        Opcodes.V17,
        Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
        name,
        null,
        "java/lang/Object",
        null);
    Method method = Method.getMethod("String[] pieces(int)");
    GeneratorAdapter code =
        new GeneratorAdapter(
            Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, method, null, null, writer);
    for (int i = 0; i < all.size(); i++) {
      Label next = code.newLabel();
      code.loadArg(0);
      code.push(i);
      code.ifICmp(GeneratorAdapter.NE, next);
      giveBack(code, pieces(all.get(i)));
      code.mark(next);
    }
    giveBack(code, List.of());
    code.endMethod();
    writer.visitEnd();
    return writer.toByteArray();
  }

  private static void giveBack(GeneratorAdapter code, List<String> pieces) {
    code.push(pieces.size());
    code.newArray(TEXT);
    for (int i = 0; i < pieces.size(); i++) {
      code.dup();
      code.push(i);
      code.push(pieces.get(i));
      code.arrayStore(TEXT);
    }
    code.returnValue();
  }

  private static List<String> pieces(byte[] bytes) {
    List<String> pieces = new ArrayList<>();
    for (int from = 0; from < bytes.length; from += PIECE) {
      int size = Math.min(PIECE, bytes.length - from);
      pieces.add(new String(bytes, from, size, StandardCharsets.ISO_8859_1));
    }
    return pieces;
  }
}
