package plainsward.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.tree.ClassNode;

/**
 * Rewrites a folder of compiled classes: the lambdas of a source file become one class beside those
 * that they stand in, and a record's equality and hash code are written out. All does what it did
 * before; only the JVM need not make it at run time, which costs about a fifth of a millisecond a
 * piece, and there are hundreds in one answer. Run by the build with one argument, the folder. A
 * second run finds nothing left to do.
 */
public final class PlainClasses {
  private final Map<String, ClassNode> classes = new TreeMap<>();
  private final Path folder;

  private PlainClasses(Path folder) {
    this.folder = folder;
  }

  /** Rewrites the folder; see the class. */
  public static void main(String[] args) throws IOException {
    if (args.length != 1) {
      throw new IllegalArgumentException("CLASSES-FOLDER was expected");
    }
    new PlainClasses(Path.of(args[0])).rewrite();
  }

  private void rewrite() throws IOException {
    for (Path file : classFiles()) {
      ClassNode node = new ClassNode();
      new ClassReader(Files.readAllBytes(file)).accept(node, 0);
      classes.put(node.name, node);
    }
    Map<ClassNode, LambdaClass> lambdas = new LinkedHashMap<>();
    for (ClassNode node : classes.values()) {
      RecordRewriter.rewrite(node);
      ClassNode host = host(node);
      if (host != null) {
        LambdaClass into = lambdas.getOrDefault(host, new LambdaClass(host.name));
        if (LambdaRewriter.rewrite(node, into)) {
          lambdas.put(host, into);
        }
      }
    }
    lambdas.forEach((host, made) -> add(host, made.make()));
    for (ClassNode node : classes.values()) {
      write(node);
    }
  }

  private ClassNode host(ClassNode node) {
    return node.nestHostClass == null ? node : classes.get(node.nestHostClass);
  }

  /** A class of a nest may call what is private to another; the host lists who belongs to it. */
  private void add(ClassNode host, ClassNode lambda) {
    lambda.nestHostClass = host.name;
    host.visitNestMember(lambda.name);
    classes.put(lambda.name, lambda);
  }

  private boolean isNamed(ClassNode lambda) {
    ClassNode host = host(lambda);
    return host != null && host.nestMembers != null && host.nestMembers.contains(lambda.name);
  }

  private List<Path> classFiles() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".class")).sorted().toList();
    }
  }

  /** Writes the class; one that an earlier run made and that nobody names any more is deleted. */
  private void write(ClassNode node) throws IOException {
    Path file = folder.resolve(node.name + ".class");
    if (node.name.contains(LambdaClass.MARK) && !isNamed(node)) {
      Files.deleteIfExists(file);
      return;
    }
    ClassWriter writer = new ClassWriter(0);
    node.accept(writer);
    Files.write(file, writer.toByteArray());
  }
}
