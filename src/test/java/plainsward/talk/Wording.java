package plainsward.talk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/**
 * One way to put a job into words, with the product that it takes. The words stand in {@code
 * metamorphic.txt}.
 *
 * @param kind what is dosed how, and how it is put, such as {@code thousand, typos}
 * @param turns what is typed, turn by turn
 * @param product what must come out where anything does
 */
record Wording(String kind, List<String> turns, Quantity product) {
  private static final Map<String, List<String>> WORDS = words();

  private static Map<String, List<String>> words() {
    try {
      Map<String, List<String>> words = new HashMap<>();
      for (String line : Files.readAllLines(Path.of("src/test/resources/metamorphic.txt"))) {
        int sign = line.indexOf(" = ");
        List<String> all = new ArrayList<>();
        for (String word : line.substring(sign + 3).split("\\|", -1)) {
          boolean tank = line.startsWith("tank");
          all.add(tank ? word.stripTrailing().replaceFirst("^ ", "") : word.strip());
        }
        words.put(line.substring(0, sign), all);
      }
      return words;
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static String pick(Random random, String list) {
    List<String> all = WORDS.get(list);
    return all.get(random.nextInt(all.size()));
  }

  /** A job: what is dosed how, its area or volume and its rate in words, and its product. */
  private record Job(String kind, String area, String rate, Quantity product) {}

  /** A random wording of a random job. */
  static Wording of(Random random) {
    Job job =
        switch (random.nextInt(8)) {
          case 0 -> acres(random);
          case 1 -> metric(random);
          case 2 -> gallons(random);
          default -> thousands(random);
        };
    return job.kind.equals("gallon") ? filled(random, job) : put(random, job);
  }

  private static Job thousands(Random random) {
    int hundreds = 10 + random.nextInt(190);
    int quarters = 1 + random.nextInt(15);
    String rate =
        Spoken.quarters(random, quarters, pick(random, "oz")) + " " + pick(random, "thousand");
    Ratio ounces = Ratio.of((long) hundreds * quarters, 40);
    return new Job("thousand", ground(random, hundreds), rate, amount(ounces, "[foz_us]"));
  }

  private static String ground(Random random, int hundreds) {
    if (random.nextInt(7) == 0) {
      return random.nextBoolean() ? hundreds + "x100" : hundreds + " by 100 feet";
    }
    return Spoken.hundreds(random, hundreds) + " " + pick(random, "sqft");
  }

  private static Job acres(Random random) {
    int quarters = 1 + random.nextInt(12);
    int ounces = 8 * (1 + random.nextInt(12));
    String unit = quarters < 4 ? "acre" : pick(random, "acre");
    String rate = ounces + " " + pick(random, "oz") + " " + pick(random, "peracre");
    Ratio product = Ratio.of((long) quarters * ounces, 4);
    return new Job(
        "acre", Spoken.quarters(random, quarters, unit), rate, amount(product, "[foz_us]"));
  }

  private static Job metric(Random random) {
    int tens = 5 + random.nextInt(150);
    int fives = 2 + random.nextInt(20);
    String said = random.nextInt(3) == 0 ? Spoken.words(tens * 10) : "" + tens * 10;
    String rate = fives * 5 + " " + pick(random, "ml") + " " + pick(random, "per100");
    Ratio product = Ratio.of((long) tens * fives, 2);
    return new Job("metric", said + " " + pick(random, "sqm"), rate, amount(product, "mL"));
  }

  private static Job gallons(Random random) {
    int gallons = 1 + random.nextInt(25);
    int quarters = 1 + random.nextInt(16);
    boolean spoons = random.nextBoolean();
    String unit = pick(random, spoons ? "spoons" : "oz");
    String volume =
        (random.nextInt(3) == 0 ? Spoken.words(gallons) : gallons) + " " + pick(random, "gallons");
    String rate = Spoken.quarters(random, quarters, unit) + " " + pick(random, "pergal");
    Ratio product = Ratio.of((long) gallons * quarters, 4);
    return new Job("gallon", volume, rate, amount(product, spoons ? "[tbs_us]" : "[foz_us]"));
  }

  private static Quantity amount(Ratio value, String unit) {
    return new Quantity(value, Unit.of(unit));
  }

  private static Wording filled(Random random, Job job) {
    String text = pick(random, "fill").replace("{volume}", job.area).replace("{rate}", job.rate);
    return typed(random, job, text);
  }

  private static Wording put(Random random, Job job) {
    int way = random.nextInt(8);
    if (way == 0) {
      String text = said(job, pick(random, "spoken"), "").replaceAll("[.,?!](?= |$)", "");
      return new Wording(job.kind + ", spoken", List.of(text), job.product);
    }
    if (way == 1) {
      List<String> turns = new ArrayList<>();
      turns.add(said(job, random.nextBoolean() ? "my lawn is {area}" : "{area} of grass", ""));
      turns.add(
          said(job, random.nextBoolean() ? "label says {rate}" : "its {rate} on the jug", ""));
      Collections.shuffle(turns, random);
      turns.add(pick(random, "ask"));
      return new Wording(job.kind + ", bit by bit", turns, job.product);
    }
    return typed(random, job, said(job, pick(random, "order"), pick(random, "tank")));
  }

  private static String said(Job job, String form, String tank) {
    return form.replace("{area}", job.area).replace("{rate}", job.rate).replace("{tank}", tank);
  }

  /**
   * As typed: plain, with chatter around it or slips, without stops, in capitals, spaced, broken.
   */
  private static Wording typed(Random random, Job job, String text) {
    int way = random.nextInt(7);
    String typed =
        switch (way) {
          case 0 -> pick(random, "before") + " " + text + " " + pick(random, "after");
          case 1 -> Slips.in(random, text);
          case 2 -> text.replaceAll("[?!,](?= |$)|[.](?= |$)", "");
          case 3 -> text.toUpperCase(java.util.Locale.ROOT).replace("/K", "/k").replace("K ", "k ");
          case 4 -> text.replace(" ", "  ");
          case 5 -> BrokenNumbers.in(random, text);
          default -> text;
        };
    List<String> hows =
        List.of("chatter", "slips", "no stops", "capitals", "spaced", "broken", "plain");
    String how = hows.get(way);
    return new Wording(job.kind + ", " + how, List.of(typed), job.product);
  }
}
