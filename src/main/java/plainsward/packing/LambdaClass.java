package plainsward.packing;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodNode;

/** Makes the class of one lambda: a field for each captured value and the interface's method. */
final class LambdaClass {
  /** The field of the only instance, where nothing is captured. */
  static final String ONLY = "ONLY";

  /** The method that makes an instance of what is captured. */
  static final String MAKE = "of";

  private static final int HIDDEN = Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC;
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");

  private final LambdaSite site;
  private final Type own;
  private final Method constructor;
  private final ClassNode node = new ClassNode();

  LambdaClass(LambdaSite site) {
    this.site = site;
    this.own = Type.getObjectType(site.name());
    this.constructor = new Method("<init>", Type.VOID_TYPE, site.captured());
  }

  ClassNode make() {
    node.visit(
        Opcodes.V17,
        HIDDEN | Opcodes.ACC_SUPER,
        site.name(),
        null,
        OBJECT.getInternalName(),
        new String[] {site.interfaceName()});
    for (int i = 0; i < site.captured().length; i++) {
      node.visitField(HIDDEN, "c" + i, site.captured()[i].getDescriptor(), null, null);
    }
    constructor();
    if (site.captured().length == 0) {
      only();
    } else {
      maker();
    }
    body();
    return node;
  }

  private GeneratorAdapter method(int access, Method method) {
    MethodNode made =
        new MethodNode(
            access | Opcodes.ACC_SYNTHETIC, method.getName(), method.getDescriptor(), null, null);
    node.methods.add(made);
    return new GeneratorAdapter(made, made.access, method.getName(), method.getDescriptor());
  }

  private void constructor() {
    GeneratorAdapter code = method(0, constructor);
    code.loadThis();
    code.invokeConstructor(OBJECT, Method.getMethod("void <init>()"));
    for (int i = 0; i < site.captured().length; i++) {
      code.loadThis();
      code.loadArg(i);
      code.putField(own, "c" + i, site.captured()[i]);
    }
    code.returnValue();
    end(code, 3);
  }

  private void only() {
    int access = Opcodes.ACC_STATIC | HIDDEN;
    node.visitField(access, ONLY, site.descriptor(), null, null);
    GeneratorAdapter code = method(Opcodes.ACC_STATIC, Method.getMethod("void <clinit>()"));
    code.newInstance(own);
    code.dup();
    code.invokeConstructor(own, constructor);
    code.putStatic(own, ONLY, site.factory().getReturnType());
    code.returnValue();
    end(code, 2);
  }

  private void maker() {
    GeneratorAdapter code =
        method(Opcodes.ACC_STATIC, new Method(MAKE, site.factory().getDescriptor()));
    code.newInstance(own);
    code.dup();
    code.loadArgs();
    code.invokeConstructor(own, constructor);
    code.returnValue();
    end(code, 2 + words(site.captured()));
  }

  /** The interface's method: hands what was captured and what it is given to the lambda's body. */
  private void body() {
    GeneratorAdapter code =
        method(Opcodes.ACC_PUBLIC, new Method(site.method(), site.erased().getDescriptor()));
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
    arguments(code, wanted);
    call(code, body);
    Type given = makes ? bodyOwner : Type.getReturnType(body.getDesc());
    Adapting.result(code, given, site.exact().getReturnType(), site.erased().getReturnType());
    code.returnValue();
    end(code, 4 + 2 * wanted.size());
  }

  private void arguments(GeneratorAdapter code, List<Type> wanted) {
    int captured = site.captured().length;
    for (int i = 0; i < captured; i++) {
      code.loadThis();
      code.getField(own, "c" + i, site.captured()[i]);
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
    int locals =
        ((code.getAccess() & Opcodes.ACC_STATIC) == 0 ? 1 : 0) + words(code.getArgumentTypes());
    code.visitMaxs(stack + 2, locals);
    code.visitEnd();
  }

  private static int words(Type[] types) {
    int words = 0;
    for (Type type : types) {
      words += type.getSize();
    }
    return words;
  }
}
