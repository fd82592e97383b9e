package plainsward.terminal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.function.Function;
import plainsward.reply.Kind;
import plainsward.reply.ReplyBuilder;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;

/** One run of the program over streams in memory. */
record Ran(int status, String out, String err) {
  static final Clock MAY_FIRST = Clock.fixed(Instant.parse("2026-05-01T12:00:00Z"), ZoneOffset.UTC);

  /** Says back what it was asked, with the date and the measures that it was opened for. */
  static final Function<Setting, Answering> ECHO =
      setting ->
          said ->
              new ReplyBuilder(Kind.ANSWER)
                  .headline(said + "|" + setting.today() + "|" + setting.units().word())
                  .build();

  static final Function<Setting, Answering> REAL = setting -> new Conversation(setting)::answer;

  static final Function<Setting, Answering> FAILING =
      setting ->
          said -> {
            if (said.contains("fail")) {
              throw new IllegalStateException("on purpose");
            }
            return ECHO.apply(setting).answer(said);
          };

  static Surroundings around(Function<Setting, Answering> opening) {
    return new Surroundings(Map.of(), MAY_FIRST, false, StandardCharsets.UTF_8, opening);
  }

  static Ran echo(String in, String... args) {
    return with(ECHO, in.getBytes(StandardCharsets.UTF_8), args);
  }

  static Ran real(String in, String... args) {
    return with(REAL, in.getBytes(StandardCharsets.UTF_8), args);
  }

  static Ran with(Function<Setting, Answering> opening, byte[] in, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    return into(out, around(opening), new ByteArrayInputStream(in), args);
  }

  static Ran into(OutputStream out, Surroundings around, InputStream in, String... args) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(args, in, new PrintStream(out, false), new PrintStream(err, false), around);
    String said =
        out instanceof ByteArrayOutputStream kept ? kept.toString(StandardCharsets.UTF_8) : "";
    return new Ran(status, said, err.toString(StandardCharsets.UTF_8));
  }

  String[] lines() {
    return out.isEmpty() ? new String[0] : out.substring(0, out.length() - 1).split("\n", -1);
  }
}
