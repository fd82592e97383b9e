package plainsward.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import plainsward.units.UnitSystem;

/** Reads one turn: text in, facts out. It never throws for anything typed. */
public final class Reader {
  private final UnitSystem system;
  private final LocalDate today;

  /**
   * A reader.
   *
   * @param system the measures meant where the text does not tell
   * @param today the day that "yesterday" is reckoned from
   */
  public Reader(UnitSystem system, LocalDate today) {
    this.system = system;
    this.today = today;
  }

  /** What was understood of a turn. */
  public Facts read(String typed, Vocabulary known) {
    String text = Cleaner.clean(typed);
    List<Token> tokens = Spelling.shipped().mended(Tokens.joined(Tokenizer.tokens(text)));
    List<PhraseBook.Found<NameBook.Name>> names = NameBook.shipped().names(tokens);
    tokens = tagged(tokens, names);
    Passage passage = new Passage(text, tokens, system);
    FactMaker maker = new FactMaker(passage);
    List<Fact> facts = new ArrayList<>(maker.make(new Scanner(tokens, system, today).mentions()));
    facts.addAll(named(passage, names));
    List<Fact> sorted = new ArrayList<>(new Assembler(passage).assembled(facts));
    sorted.sort((a, b) -> Integer.compare(a.at(), b.at()));
    AskBook book = AskBook.shipped();
    Set<String> labels = new LinkedHashSet<>(maker.labels());
    labels.addAll(saidAgain(tokens, known.labels()));
    if (labels.isEmpty()) {
      labels.addAll(byColour(tokens, known.labels()));
    }
    return new Facts(
        text,
        tokens,
        sorted,
        book.asks(text, tokens),
        book.signs(tokens),
        saidAgain(tokens, known.lawns()),
        List.copyOf(labels));
  }

  private static List<Token> tagged(
      List<Token> tokens, List<PhraseBook.Found<NameBook.Name>> names) {
    List<Token> tagged = new ArrayList<>(tokens);
    for (PhraseBook.Found<NameBook.Name> found : names) {
      String tag = found.meaning().kind().name().toLowerCase(Locale.ROOT);
      for (int i = found.from(); i < found.to(); i++) {
        tagged.set(i, tagged.get(i).tagged(tag));
      }
    }
    return tagged;
  }

  private static List<Fact> named(Passage passage, List<PhraseBook.Found<NameBook.Name>> names) {
    List<Fact> facts = new ArrayList<>();
    for (PhraseBook.Found<NameBook.Name> found : names) {
      String kind = found.meaning().kind().name().toLowerCase(Locale.ROOT);
      String said = passage.said(found.from(), found.to());
      facts.add(Fact.of(kind, found.meaning().id(), said, found.from()));
    }
    return facts;
  }

  /** The known names that stand in the text, in the order they are said. */
  private static List<String> saidAgain(List<Token> tokens, Set<String> names) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      for (String name : names) {
        if (stands(tokens, i, name.split(" |(?<=-)|(?=-)")) && !found.contains(name)) {
          found.add(name);
        }
      }
    }
    return found;
  }

  /** "red on 6k": the one label whose name begins with this colour. */
  private static List<String> byColour(List<Token> tokens, Set<String> names) {
    List<String> found = new ArrayList<>();
    for (Token token : tokens) {
      if (!Owners.isColour(token.norm())) {
        continue;
      }
      for (String name : names) {
        if (name.startsWith(token.norm() + " ") && !found.contains(name)) {
          found.add(name);
        }
      }
    }
    return found.size() == 1 ? found : List.of();
  }

  private static boolean stands(List<Token> tokens, int at, String[] words) {
    for (int i = 0; i < words.length; i++) {
      if (at + i >= tokens.size() || !alike(tokens.get(at + i).norm(), words[i])) {
        return false;
      }
    }
    return true;
  }

  private static boolean alike(String said, String name) {
    return said.equals(name) || said.equals(name + "s") || name.equals(said + "s");
  }
}
