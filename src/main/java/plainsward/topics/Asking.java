package plainsward.topics;

import java.util.Map;

/** How a missing fact is asked for: where it stands, in plain words. */
final class Asking {
  private static final Map<String, String> QUESTIONS =
      Map.ofEntries(
          Map.entry(
              "label_rate",
              "What does your label give: so much per 1,000 sq ft, per acre or per gallon? Look "
                  + "under \"Directions for Use\" for your grass or weed."),
          Map.entry(
              "per",
              "Per what: per 1,000 sq ft, per acre or per gallon? It stands beside the amount on "
                  + "the label, under \"Directions for Use\"."),
          Map.entry("area", "How big is the area of grass to treat: square feet, or its sides?"),
          Map.entry("tank", "How much does your tank hold?"),
          Map.entry(
              "container", "How much is in the container? It stands on the front of the label."),
          Map.entry("price", "What does it cost?"),
          Map.entry(
              "analysis",
              "What are the three numbers on the bag, such as 24-0-11? The first is the nitrogen."),
          Map.entry(
              "nitrogen_target", "How much nitrogen per 1,000 sq ft do you want to lay down?"),
          Map.entry("bag", "What does a bag weigh, or what area is it for?"),
          Map.entry(
              "interval",
              "How many days apart does the label want applications? Look for \"do not apply more "
                  + "than\" or \"interval\" near the rates."),
          Map.entry("last_applied", "When was it sprayed last?"),
          Map.entry(
              "season_limit",
              "How many applications a year does the label allow? It stands near the rates."),
          Map.entry("shape", "What is the other side? Give me both sides of each piece."),
          Map.entry("catch_volume", "How much water did you use on it?"),
          Map.entry("test_area", "What area did you spray with that: its length and width?"),
          Map.entry("swath", "How wide is the band that you spray, or how far apart are the tips?"),
          Map.entry("walk_speed", "How fast do you go: mph, or so many feet in so many seconds?"),
          Map.entry("nozzle_flow", "How much comes out of a tip in a minute?"),
          Map.entry("spray_rate", "How much spray do you lay down on 1,000 sq ft?"),
          Map.entry("pace", "How long is one of your paces?"));

  private Asking() {}

  /** The question for a missing fact. */
  static String question(String name) {
    return QUESTIONS.getOrDefault(name, "What is the " + name.replace('_', ' ') + "?");
  }
}
