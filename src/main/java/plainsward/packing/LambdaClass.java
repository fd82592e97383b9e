package plainsward.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Makes the one class of all lambdas of a source file: fields for what any of them captures, a
 * number that tells which it is, and for each method of an interface the bodies by that number. One
 * class for many, since each class costs a tenth of a millisecond to load from the jar.
 */
final class LambdaClass {
  /** What the names of the classes made end with. */
  static final String MARK = "$$Lambdas";

  private static final int HIDDEN = Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC;
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");
  private static final String WHICH = "which";

  private final ClassNode node = new ClassNode();
  private final Type own;
  private final Slots slots = new Slots();
  private final List<LambdaSite> sites = new ArrayList<>();
  private final Map<Method, List<LambdaSite>> byMethod = new LinkedHashMap<>();

  /** Will hold the lambdas of this class and of those inside it. */
  LambdaClass(String host) {
    own = Type.getObjectType(host + MARK);
  }

  /** Takes a lambda in; gives the number by which {@link #only} and {@link #maker} know it. */
  int add(LambdaSite site) {
    slots.fit(site.captured());
    byMethod.computeIfAbsent(method(site), m -> new ArrayList<>()).add(site);
    sites.add(site);
    return sites.size() - 1;
  }

  private static Method method(LambdaSite site) {
    return new Method(site.method(), site.erased().getDescriptor());
  }

  String name() {
    return own.getInternalName();
  }

  /** The field of the only instance of a lambda that captures nothing. */
  static String only(int number) {
    return "only" + number;
  }

  /** The method that makes an instance of a lambda of what it captures. */
  static String maker(int number) {
    return "of" + number;
  }

  ClassNode make() {
    TreeSet<String> interfaces = new TreeSet<>();
    sites.forEach(site -> interfaces.add(site.interfaceName()));
    node.visit(
        Opcodes.V17,
        HIDDEN | Opcodes.ACC_SUPER,
        name(),
        null,
        OBJECT.getInternalName(),
        interfaces.toArray(new String[0]));
    node.visitField(HIDDEN, WHICH, "I", null, null);
    slots.each((name, type) -> node.visitField(HIDDEN, name, type.getDescriptor(), null, null));
    constructor();
    onlyOnes();
    for (int i = 0; i < sites.size(); i++) {
      if (sites.get(i).captured().length > 0) {
        maker(sites.get(i), i);
      }
    }
    byMethod.forEach(this::body);
    return node;
  }

  private MethodNode method(int access, Method method) {
    MethodNode made =
        new MethodNode(
            access | Opcodes.ACC_SYNTHETIC, method.getName(), method.getDescriptor(), null, null);
    node.methods.add(made);
    return made;
  }

  private static GeneratorAdapter code(MethodNode made) {
    return new GeneratorAdapter(made, made.access, made.name, made.desc);
  }

  private Method constructing() {
    return new Method("<init>", slots.constructor());
  }

  private void constructor() {
    GeneratorAdapter code = code(method(0, constructing()));
    code.loadThis();
    code.invokeConstructor(OBJECT, Method.getMethod("void <init>()"));
    code.loadThis();
    code.loadArg(0);
    code.putField(own, WHICH, Type.INT_TYPE);
    int[] next = {1};
    slots.each(
        (name, type) -> {
          code.loadThis();
          code.loadArg(next[0]++);
          code.putField(own, name, type);
        });
    code.returnValue();
    end(code, 3);
  }

  private void onlyOnes() {
    GeneratorAdapter code = code(method(Opcodes.ACC_STATIC, Method.getMethod("void <clinit>()")));
    for (int i = 0; i < sites.size(); i++) {
      if (sites.get(i).captured().length == 0) {
        node.visitField(
            Opcodes.ACC_STATIC | HIDDEN, only(i), sites.get(i).descriptor(), null, null);
        code.newInstance(own);
        code.dup();
        code.push(which(sites.get(i)));
        slots.each((name, type) -> Slots.pushNothing(code, type));
        code.invokeConstructor(own, constructing());
        code.putStatic(own, only(i), sites.get(i).factory().getReturnType());
      }
    }
    code.returnValue();
    end(code, 3 + slots.words());
  }

  private int which(LambdaSite site) {
    return byMethod.get(method(site)).indexOf(site);
  }

  private void maker(LambdaSite site, int number) {
    GeneratorAdapter code =
        code(method(Opcodes.ACC_STATIC, new Method(maker(number), site.factory().getDescriptor())));
    Map<String, Integer> from = slots.places(site.captured());
    code.newInstance(own);
    code.dup();
    code.push(which(site));
    slots.each(
        (name, type) -> {
          Integer argument = from.get(name);
          if (argument == null) {
            Slots.pushNothing(code, type);
          } else {
            code.loadArg(argument);
          }
        });
    code.invokeConstructor(own, constructing());
    code.returnValue();
    end(code, 3 + slots.words());
  }

  /** A method of an interface: goes to the body of the lambda that it is called on. */
  private void body(Method method, List<LambdaSite> all) {
    MethodNode made = method(Opcodes.ACC_PUBLIC, method);
    GeneratorAdapter code = code(made);
    int stack = 1;
    Label[] labels = new Label[all.size()];
    for (int i = 0; i < labels.length; i++) {
      labels[i] = code.newLabel();
    }
    if (labels.length > 1) {
      code.loadThis();
      code.getField(own, WHICH, Type.INT_TYPE);
      code.visitTableSwitchInsn(0, labels.length - 1, labels[labels.length - 1], labels);
    }
    for (int i = 0; i < labels.length; i++) {
      if (labels.length > 1) {
        code.mark(labels[i]);
        made.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
      }
      stack = Math.max(stack, body(code, all.get(i)));
    }
    end(code, stack);
  }

  /** Hands what was captured and what it is given to a lambda's body. */
  private int body(GeneratorAdapter code, LambdaSite site) {
    Handle body = site.body();
    Type bodyOwner = Type.getObjectType(body.getOwner());
    boolean makes = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    List<Type> wanted = new ArrayList<>();
    if (makes) {
      code.newInstance(bodyOwner);
      code.dup();
    } else if (body.getTag() != Opcodes.H_INVOKESTATIC) {
      wanted.add(bodyOwner);
    }
    wanted.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
    arguments(code, site, wanted);
    call(code, body);
    Type given = makes ? bodyOwner : Type.getReturnType(body.getDesc());
    Adapting.result(code, given, site.exact().getReturnType(), site.erased().getReturnType());
    code.returnValue();
    return 4 + 2 * wanted.size();
  }

  private void arguments(GeneratorAdapter code, LambdaSite site, List<Type> wanted) {
    int captured = site.captured().length;
    String[] fields = new String[captured];
    slots.places(site.captured()).forEach((name, argument) -> fields[argument] = name);
    for (int i = 0; i < captured; i++) {
      code.loadThis();
      code.getField(own, fields[i], Slots.kind(site.captured()[i]));
      if (site.captured()[i].getSort() >= Type.ARRAY) {
        code.checkCast(site.captured()[i]);
      }
    }
    Type[] erased = site.erased().getArgumentTypes();
    Type[] exact = site.exact().getArgumentTypes();
    for (int i = 0; i < erased.length; i++) {
      code.loadArg(i);
      Adapting.argument(code, erased[i], exact[i], wanted.get(captured + i));
    }
  }

  /** What is private in the nest is called like anything else since class files know of nests. */
  private static void call(GeneratorAdapter code, Handle body) {
    int opcode =
        switch (body.getTag()) {
          case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
          case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
          default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    code.visitMethodInsn(
        opcode, body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
  }

  private static void end(GeneratorAdapter code, int stack) {
    int locals = (code.getAccess() & Opcodes.ACC_STATIC) == 0 ? 1 : 0;
    for (Type type : code.getArgumentTypes()) {
      locals += type.getSize();
    }
    code.visitMaxs(stack + 2, locals);
    code.visitEnd();
  }
}
