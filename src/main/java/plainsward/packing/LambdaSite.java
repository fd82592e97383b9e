package plainsward.packing;

import org.objectweb.asm.Handle;
import org.objectweb.asm.Type;

/**
 * A place where a lambda is made, in the words of {@link java.lang.invoke.LambdaMetafactory}.
 *
 * @param method the method of the interface
 * @param factory from what is captured to the interface
 * @param erased the method's type as the interface declares it
 * @param body what is to be called
 * @param exact the method's type as it is used here
 */
record LambdaSite(String method, Type factory, Type erased, Handle body, Type exact) {

  Type[] captured() {
    return factory.getArgumentTypes();
  }

  String descriptor() {
    return factory.getReturnType().getDescriptor();
  }

  String interfaceName() {
    return factory.getReturnType().getInternalName();
  }
}
