package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.util.List;
import org.drysill.survey.Layer;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Vocabularies;

/** Every layer of a built-up wall has what heat and vapour are reckoned with. */
final class WallChecks {
  /** The vocabulary of materials that count the same whatever their thickness. */
  private static final String THIN = "material of any thickness";

  private final List<String> thin;
  private final CheckList list;

  private WallChecks(List<String> thin, CheckList list) {
    this.thin = thin;
    this.list = list;
  }

  static void check(Survey survey, Vocabularies vocabularies, CheckList list) {
    WallChecks checks = new WallChecks(vocabularies.of(THIN), list);
    each(
        survey.rooms(),
        "rooms",
        (room, path) ->
            each(
                room.walls(),
                path + ".walls",
                (wall, at) -> each(wall.layers(), at + ".layers", checks::layer)));
  }

  private void layer(Layer layer, String path) {
    if (layer.vapourFactor().isPresent() && layer.sd().isPresent()) {
      list.add(
          SurveyCode.NOT_EXACTLY_ONE, path + ".sd", "both", "at most one of vapour_factor, sd");
    }
    boolean thick = layer.thickness().map(Quantity::low).filter(t -> t > 0).isPresent();
    if (!thick && needsThickness(layer)) {
      list.add(
          SurveyCode.LAYER_WITHOUT_THICKNESS,
          path + ".thickness",
          layer.thickness().map(Quantity::written).orElse("none"),
          "the thickness of the " + layer.material() + ", above 0 mm");
    }
  }

  /** What is given by metre of material says nothing without metres. */
  private boolean needsThickness(Layer layer) {
    boolean anyThickness =
        thin.isEmpty() || thin.stream().anyMatch(layer.material()::equalsIgnoreCase);
    return !anyThickness || layer.vapourFactor().isPresent() || layer.conductivity().isPresent();
  }
}
