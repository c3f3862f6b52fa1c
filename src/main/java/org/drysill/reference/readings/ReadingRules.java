package org.drysill.reference.readings;

import java.util.List;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * How readings are taken: what is assumed of instruments, when two readings count as simultaneous,
 * what humidities are compared with.
 *
 * @param accuracy what is assumed of an instrument whose accuracy nobody states
 * @param pairing when two readings count as taken together
 * @param outdoor what stands in for outdoor air that was not read
 * @param thresholds humidities that a room reading is compared with
 * @param criteria published limits of moving averages, for comparison
 * @param classes what the internal humidity classes are typical of
 * @param co2 what CO₂ readings are compared with
 * @param change when two visits can be compared
 * @param balance when readings can tell the production of moisture
 */
public record ReadingRules(
    @Key(about = "Accuracy of an instrument whose accuracy nobody states") Accuracy accuracy,
    @Key(about = "When two readings count as taken together") Pairing pairing,
    @Key(about = "What stands in for outdoor air that was not read") OutdoorRules outdoor,
    @Key(about = "Humidities that a reading is compared with", required = true)
        List<Threshold> thresholds,
    @Key(about = "Published limits of moving averages", required = true) List<Criterion> criteria,
    @Key(about = "What the humidity classes are typical of, class 1 first", size = 5)
        List<ClassMeaning> classes,
    @Key(about = "What CO2 readings are compared with") Co2Rules co2,
    @Key(about = "When two visits can be compared") ChangeRules change,
    @Key(about = "When readings can tell the production of moisture") BalanceRules balance) {
  /** Copies the lists. */
  public ReadingRules {
    thresholds = List.copyOf(thresholds);
    criteria = List.copyOf(criteria);
    classes = List.copyOf(classes);
  }

  /** Reads the bundled rules. */
  public static ReadingRules bundled() {
    return DataFiles.read("defaults/readings.yaml", ReadingRules.class);
  }
}
