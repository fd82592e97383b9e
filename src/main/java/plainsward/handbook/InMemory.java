package plainsward.handbook;

import org.apache.lucene.store.ByteBuffersDataOutput;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.SingleInstanceLockFactory;

/** Index files in memory, each as one array, which is read faster than a chain of buffers. */
final class InMemory {
  private InMemory() {}

  static ByteBuffersDirectory directory() {
    return new ByteBuffersDirectory(
        new SingleInstanceLockFactory(),
        ByteBuffersDataOutput::new,
        ByteBuffersDirectory.OUTPUT_AS_BYTE_ARRAY);
  }
}
