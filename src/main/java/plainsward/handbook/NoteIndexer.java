package plainsward.handbook;

import java.io.IOException;
import org.apache.lucene.analysis.core.KeywordAnalyzer;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.LogDocMergePolicy;
import org.apache.lucene.index.SerialMergeScheduler;
import org.apache.lucene.store.Directory;

/** Writes an index of notes; in one thread and in the notes' order, so always the same one. */
final class NoteIndexer implements AutoCloseable {
  private static final double BUFFER_MEGABYTES = 64;

  private final IndexWriter writer;

  NoteIndexer(Directory into) throws IOException {
    writer =
        new IndexWriter(
            into,
            new IndexWriterConfig(new KeywordAnalyzer())
                .setCodec(new SteadyCodec())
                .setSimilarity(Fields.SIMILARITY)
                .setMergePolicy(new LogDocMergePolicy())
                .setMergeScheduler(new SerialMergeScheduler())
                .setRAMBufferSizeMB(BUFFER_MEGABYTES)
                .setUseCompoundFile(true));
  }

  void add(Note note) throws IOException {
    writer.addDocuments(NoteDocuments.of(note));
  }

  @Override
  public void close() throws IOException {
    writer.close();
  }
}
