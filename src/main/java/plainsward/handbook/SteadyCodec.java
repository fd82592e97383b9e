package plainsward.handbook;

import java.io.IOException;
import java.util.Map;
import org.apache.lucene.codecs.Codec;
import org.apache.lucene.codecs.FilterCodec;
import org.apache.lucene.codecs.SegmentInfoFormat;
import org.apache.lucene.index.SegmentInfo;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.IOContext;

/**
 * Writes Lucene's usual files without the clock and the machine that Lucene notes in them, so that
 * the same notes always make the same bytes. Read back by the usual codec, whose name it writes.
 */
final class SteadyCodec extends FilterCodec {
  SteadyCodec() {
    super(Codec.getDefault().getName(), Codec.getDefault());
  }

  @Override
  public SegmentInfoFormat segmentInfoFormat() {
    return new SteadyInfo(delegate.segmentInfoFormat());
  }

  private static final class SteadyInfo extends SegmentInfoFormat {
    private final SegmentInfoFormat usual;

    SteadyInfo(SegmentInfoFormat usual) {
      this.usual = usual;
    }

    @Override
    public SegmentInfo read(Directory directory, String segment, byte[] id, IOContext context)
        throws IOException {
      return usual.read(directory, segment, id, context);
    }

    @Override
    public void write(Directory directory, SegmentInfo info, IOContext context) throws IOException {
      SegmentInfo steady = withoutOrigin(info);
      steady.setFiles(info.files());
      usual.write(directory, steady, context);
      info.setFiles(steady.files());
    }

    private static SegmentInfo withoutOrigin(SegmentInfo info) {
      return new SegmentInfo(
          info.dir,
          info.getVersion(),
          info.getMinVersion(),
          info.name,
          info.maxDoc(),
          info.getUseCompoundFile(),
          info.getHasBlocks(),
          info.getCodec(),
          Map.of(),
          info.getId(),
          info.getAttributes(),
          info.getIndexSort());
    }
  }
}
