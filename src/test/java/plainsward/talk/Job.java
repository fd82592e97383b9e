package plainsward.talk;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import plainsward.reply.Reply;
import plainsward.units.Quantity;

/** A job as a person tells it, and what its reply says. */
record Job(int area, String rate, int tank, String sprayRate) {

  /** Areas from 500 to 30,000 sq ft by 100, rates from 0.1 to 4 fl oz per thousand by a tenth. */
  static Arbitrary<Job> any() {
    Arbitrary<Integer> areas = Arbitraries.integers().between(5, 300).map(n -> n * 100);
    Arbitrary<String> rates = Arbitraries.integers().between(1, 40).map(Job::tenths);
    Arbitrary<Integer> tanks = Arbitraries.of(1, 2, 3, 4, 15, 25, 50);
    Arbitrary<String> sprayRates = Arbitraries.of("0.5", "1", "1.5", "2");
    return Combinators.combine(areas, rates, tanks, sprayRates).as(Job::new);
  }

  private static String tenths(int n) {
    return n / 10 + "." + n % 10;
  }

  String areaSaid() {
    return "my lawn is " + area + " sq ft";
  }

  String rateSaid() {
    return "the label says " + rate + " fl oz per 1000 sq ft";
  }

  String tankSaid() {
    return "i have a " + tank + " gallon sprayer";
  }

  String sprayRateSaid() {
    return "i put out " + sprayRate + " gallons per 1000 sq ft";
  }

  /** The four facts in the usual order. */
  List<String> said() {
    return List.of(areaSaid(), rateSaid(), tankSaid(), sprayRateSaid());
  }

  /** The job in one breath. */
  String whole() {
    return "how much for "
        + area
        + " sq ft at "
        + rate
        + " fl oz per 1000 sq ft in a "
        + tank
        + " gallon sprayer at "
        + sprayRate
        + " gallons per 1000 sq ft";
  }

  /** The figures of a reply by name, each amount in base units, so that replies compare. */
  static TreeMap<String, String> figures(Reply reply) {
    TreeMap<String, String> all = new TreeMap<>();
    reply
        .figures()
        .forEach(
            f ->
                all.put(
                    f.name(),
                    base(f.value())
                        + ".."
                        + base(f.high())
                        + f.date().map(Object::toString).orElse("")
                        + f.word().orElse("")));
    return all;
  }

  private static String base(Optional<Quantity> amount) {
    return amount.map(q -> q.inBase() + " " + q.dimension()).orElse("");
  }
}
