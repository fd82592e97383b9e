package plainsward.topics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All topics: the one list in which a new topic gets its row. */
public final class Topics {
  private static final Map<String, Topic> ALL = new LinkedHashMap<>();

  static {
    List<Topic> topics =
        List.of(
            new MixTopic(),
            new CoverageTopic(),
            new CalibrateTopic(),
            new MeasureTopic(),
            new ConvertTopic(),
            new FeedTopic(),
            new SpreadTopic(),
            new CostTopic(),
            new BuyTopic(),
            new RepeatTopic(),
            new WeatherTopic(),
            new SeedTopic(),
            new KeepOffTopic(),
            new ChooseTopic(),
            new IdentifyTopic());
    topics.forEach(topic -> ALL.put(topic.code(), topic));
    List.of(
            "choose",
            "identify",
            "progress",
            "clean",
            "tank-mix",
            "leftover",
            "gear",
            "rules",
            "timing",
            "lawn-care",
            "words",
            "label",
            "record",
            "exposure")
        .forEach(code -> ALL.putIfAbsent(code, new NoteTopic(code)));
    ALL.put("strength", ALL.get("mix"));
  }

  private Topics() {}

  /** The topic of this code. */
  public static Optional<Topic> of(String code) {
    return Optional.ofNullable(ALL.get(code));
  }
}
