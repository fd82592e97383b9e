package plainsward.dosing.published;

import java.util.Map;

/** A value with its unit as a source prints it. */
record Printed(Object value, String unit) {

  static Printed of(Object node) {
    Map<?, ?> map = (Map<?, ?>) node;
    return new Printed(map.get("value"), String.valueOf(map.get("unit")));
  }

  double number() {
    return ((Number) value).doubleValue();
  }
}
