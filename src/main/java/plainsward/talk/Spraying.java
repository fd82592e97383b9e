package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reading.Token;
import plainsward.records.LogEntry;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/** What a turn tells of a spraying beside its day: the lawns, the amounts, the weather and who. */
final class Spraying {
  private static final Set<String> TANKS =
      Set.of(
          "tank",
          "tanks",
          "tankful",
          "tankfuls",
          "load",
          "loads",
          "fill",
          "fills",
          "backpack",
          "backpacks");
  private static final Set<String> VERBS =
      Set.of(
          "sprayed",
          "treated",
          "did",
          "put",
          "hit",
          "applied",
          "fed",
          "spread",
          "threw",
          "laid",
          "broadcast");
  private static final Set<String> NOBODY =
      Set.of(
          "i", "we", "he", "she", "they", "you", "it", "just", "already", "have", "has", "had",
          "ive", "weve", "done", "and", "then", "so", "ok", "also", "that", "finally", "yes");
  private static final Set<String> ARTICLES = Set.of("the", "my", "our", "his", "her", "their");
  private static final Set<String> SKY =
      Set.of("sunny", "cloudy", "overcast", "calm", "breezy", "windy", "dry", "humid", "clear");
  private static final Set<String> GROUND = Set.of("lawn", "yard", "place", "property", "house");
  private static final Set<String> NO_NAME =
      Set.of(
          "whole",
          "entire",
          "all",
          "a",
          "this",
          "that",
          "own",
          "lawn",
          "yard",
          "on",
          "at",
          "in",
          "of",
          "to",
          "it",
          "with",
          "full",
          "half",
          "big",
          "new",
          "same",
          "today",
          "yesterday");
  private static final Set<String> SPOKEN_LAWNS =
      Set.of("front", "back", "side", "rear", "backyard", "frontyard");
  private static final int MOST_NAME_WORDS = 2;

  private final Facts turn;
  private final List<Fact> facts;
  private final Memory memory;

  Spraying(Facts turn, List<Fact> facts, Memory memory) {
    this.turn = turn;
    this.facts = facts;
    this.memory = memory;
  }

  /** An entry for each lawn that was named, or one without a lawn. */
  List<LogEntry> on(LocalDate day) {
    String label = memory.chosenLabel();
    LogEntry plain = detailed(LogEntry.of(day, label.isEmpty() ? Diary.UNNAMED : label));
    List<String> lawns = lawns();
    if (lawns.isEmpty()) {
      return List.of(area().map(plain::withArea).orElse(plain));
    }
    List<LogEntry> entries = new ArrayList<>();
    for (String lawn : lawns) {
      LogEntry entry = plain.on(lawn);
      entries.add(
          lawns.size() == 1 ? area().map(entry::withArea).orElse(entry) : withoutAmount(entry));
    }
    return entries;
  }

  /** What was used on several lawns together is no amount of any one. */
  private static LogEntry withoutAmount(LogEntry entry) {
    return new LogEntry(
        entry.id(),
        entry.date(),
        entry.label(),
        entry.lawn(),
        Optional.empty(),
        Optional.empty(),
        entry.sprayer(),
        entry.weather(),
        entry.who(),
        entry.remark());
  }

  private LogEntry detailed(LogEntry entry) {
    LogEntry told = entry;
    told = product().map(told::withProduct).orElse(told);
    told = weather().map(told::withWeather).orElse(told);
    told = who().map(told::withWho).orElse(told);
    if (!memory.chosenSprayer().isEmpty()) {
      told = told.withSprayer(memory.chosenSprayer());
    }
    return tanks().map(told::withRemark).orElse(told);
  }

  private List<String> lawns() {
    if (!turn.lawns().isEmpty()) {
      return turn.lawns();
    }
    List<String> spoken = spoken(turn);
    return spoken.isEmpty() ? named() : spoken;
  }

  /** "the front", "my back": lawns that need no name of their own. */
  static List<String> spoken(Facts turn) {
    List<String> found = new ArrayList<>();
    for (int i = 1; i < turn.tokens().size(); i++) {
      String word = turn.tokens().get(i).norm();
      String before = turn.tokens().get(i - 1).norm();
      boolean owned = ARTICLES.contains(before) || VERBS.contains(before) || before.equals("and");
      if (SPOKEN_LAWNS.contains(word) && owned && !found.contains(word)) {
        found.add(word);
      }
    }
    return found;
  }

  /** "the Hill lawn", "Mrs Dale's yard": a lawn that is named for the first time. */
  private List<String> named() {
    List<Token> tokens = turn.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      if (!GROUND.contains(tokens.get(i).norm())) {
        continue;
      }
      List<String> words = new ArrayList<>();
      for (int k = i - 1;
          k >= 0 && words.size() < MOST_NAME_WORDS && isNaming(tokens.get(k));
          k--) {
        String said = tokens.get(k).said().toLowerCase(Locale.ROOT);
        words.add(0, said.endsWith("'s") ? said.substring(0, said.length() - 2) : said);
      }
      if (!words.isEmpty()) {
        return List.of(String.join(" ", words));
      }
    }
    return List.of();
  }

  private static boolean isNaming(Token token) {
    return token.isWord()
        && token.tag().isEmpty()
        && !ARTICLES.contains(token.norm())
        && !VERBS.contains(token.norm())
        && !NO_NAME.contains(token.norm());
  }

  private Optional<Quantity> product() {
    return facts.stream()
        .filter(f -> f.name().equals("product_amount"))
        .map(Fact::amount)
        .filter(q -> q.signum() > 0)
        .findFirst();
  }

  private Optional<Quantity> area() {
    return facts.stream()
        .filter(f -> f.name().equals("area") && f.value().isPresent())
        .map(Fact::amount)
        .filter(q -> q.signum() > 0)
        .findFirst();
  }

  /** "2 tanks": how many loads, as said. */
  private Optional<String> tanks() {
    List<Token> tokens = turn.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      if (TANKS.contains(tokens.get(i).norm())) {
        int place = i;
        Optional<Fact> count =
            facts.stream()
                .filter(f -> f.at() < place && f.at() >= place - 2 && f.name().equals("number"))
                .findFirst();
        if (count.isPresent()) {
          return Optional.of(count.get().said() + " " + tokens.get(i).said());
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> weather() {
    List<String> said = new ArrayList<>();
    facts.stream().filter(f -> f.name().equals("temperature")).forEach(f -> said.add(f.said()));
    wind().ifPresent(said::add);
    turn.tokens().stream().map(Token::norm).filter(SKY::contains).forEach(said::add);
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", said));
  }

  private Optional<String> wind() {
    Optional<Fact> speed =
        facts.stream()
            .filter(f -> f.value().isPresent())
            .filter(f -> f.amount().dimension().equals(Dimension.SPEED))
            .findFirst();
    if (speed.isPresent()) {
      return Optional.of("wind " + speed.get().said());
    }
    List<Token> tokens = turn.tokens();
    for (int i = 0; i + 1 < tokens.size(); i++) {
      if (tokens.get(i).is("wind") && tokens.get(i + 1).isNumber()) {
        return Optional.of("wind " + tokens.get(i + 1).said());
      }
    }
    return Optional.empty();
  }

  /** Who did it: the words before the verb, where they name somebody. */
  private Optional<String> who() {
    List<Token> tokens = turn.tokens();
    int verb = 0;
    while (verb < tokens.size() && !VERBS.contains(tokens.get(verb).norm())) {
      verb++;
    }
    if (verb == tokens.size()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    for (int i = verb - 1; i >= 0 && tokens.get(i).isWord(); i--) {
      String word = tokens.get(i).norm();
      if (NOBODY.contains(word) || !tokens.get(i).tag().isEmpty()) {
        return Optional.empty();
      }
      if (!ARTICLES.contains(word)) {
        words.add(0, tokens.get(i).said());
      }
    }
    boolean named = !words.isEmpty() && words.size() <= MOST_NAME_WORDS && !isThing(words);
    return named ? Optional.of(String.join(" ", words)) : Optional.empty();
  }

  private boolean isThing(List<String> words) {
    String name = String.join(" ", words).toLowerCase(Locale.ROOT);
    return turn.lawns().contains(name)
        || turn.labels().contains(name)
        || words.stream().anyMatch(w -> SPOKEN_LAWNS.contains(w.toLowerCase(Locale.ROOT)));
  }
}
