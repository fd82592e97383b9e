package plainsward.terminal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plainsward.handbook.Handbook;
import plainsward.reply.Reply;
import plainsward.talk.Setting;

/** Holds the conversation of a transcript again, as the program holds it where output is piped. */
final class Replay {
  private static final String BETWEEN = "\f";

  private final Path home;
  private final Set<String> topics = new HashSet<>();
  private final Set<String> kinds = new HashSet<>();

  /**
   * @param home an empty folder for what is saved
   */
  Replay(Path home) {
    this.home = home;
  }

  /** The same conversation with the replies of today. */
  Transcript of(Transcript before) throws WrongUse, Unreadable, IOException {
    List<Transcript.Sitting> sittings = new ArrayList<>();
    for (Transcript.Sitting sitting : before.sittings()) {
      sittings.add(held(sitting));
    }
    return new Transcript(before.title(), before.shows(), sittings);
  }

  /** The topics of all replies so far. */
  Set<String> topics() {
    return Set.copyOf(topics);
  }

  /** The kinds of all replies so far, as the contract writes them. */
  Set<String> kinds() {
    return Set.copyOf(kinds);
  }

  private Transcript.Sitting held(Transcript.Sitting sitting)
      throws WrongUse, Unreadable, IOException {
    List<String> arguments = new ArrayList<>(sitting.arguments());
    arguments.addAll(List.of("--home", home.toString()));
    Choices choices = ChoiceReader.read(arguments.toArray(String[]::new));
    Answering talk = new Desk(choices, Ran.around(this::watched), Handbook.shipped()).open();
    ByteArrayOutputStream heard = new ByteArrayOutputStream();
    TalkFile file = new TalkFile(Optional.of(home), Ran.MAY_FIRST);
    Turns turns = new Turns(talk, new PlainShowing(choices.brief()), file);
    String said =
        sitting.turns().stream().map(Transcript.Turn::said).collect(Collectors.joining("\n"));
    new PipedTalk(turns, new Out(new PrintStream(heard)), BETWEEN)
        .run(new ByteArrayInputStream(said.getBytes(StandardCharsets.UTF_8)));
    String[] replies = heard.toString(StandardCharsets.UTF_8).split("\n" + BETWEEN, -1);
    List<Transcript.Turn> told = new ArrayList<>();
    for (int i = 0; i < sitting.turns().size(); i++) {
      String reply = i < replies.length ? replies[i].strip() : "(no reply)";
      told.add(new Transcript.Turn(sitting.turns().get(i).said(), reply));
    }
    return new Transcript.Sitting(sitting.date(), sitting.options(), told);
  }

  private Answering watched(Setting setting) {
    Answering real = Ran.REAL.apply(setting);
    return said -> {
      Reply reply = real.answer(said);
      topics.addAll(reply.topics());
      kinds.add(reply.kind().name());
      return reply;
    };
  }
}
