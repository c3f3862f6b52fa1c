package org.drysill.assess.ventilation.rooms;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Home;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.physics.flow.Orifice;
import org.drysill.physics.network.AirNetwork;
import org.drysill.physics.network.AirNetwork.Between;
import org.drysill.physics.network.AirNetwork.Outside;
import org.drysill.physics.network.AirPath;
import org.drysill.reference.ventilation.VentilationDefaults;

/**
 * Puts the home together as a network. Wind and warmth stand in it as one pressure: half of the
 * cracks of every room have it at their outer end, the other half its opposite, so that air comes
 * in here and goes out there without any fan. Its size is that at which the home as a whole gets
 * the outdoor air that was found for it.
 */
final class AirModel {
  private static final int HALVINGS = 50;

  private final Layout layout;
  private final Cracks cracks;
  private final FanAir fans;
  private final VentilationDefaults defaults;

  AirModel(Layout layout, Home home, FanAir fans, VentilationDefaults defaults) {
    this.layout = layout;
    this.fans = fans;
    this.defaults = defaults;
    cracks = new Cracks(layout.places(), home, defaults);
  }

  /** Fans at their mean flows, and the weather that gives the home its outdoor air. */
  AirState mean(ProvidedAir air, Case at) {
    List<Double> supply = fans.supply(fan -> at.of(fan.supply().value()));
    List<Double> extract = fans.extract(fan -> at.of(fan.extract().value()));
    double asked = at.of(air.wholeHome().value());
    double low = 0;
    double high = 1;
    while (state(supply, extract, high, at).outdoorAir() < asked) {
      high *= 2;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (state(supply, extract, middle, at).outdoorAir() < asked) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return state(supply, extract, low, at);
  }

  /** All fans at once, in a given weather. */
  AirState running(double weatherPa, Case at) {
    ToDoubleFunction<FanFlow> flow = fan -> at.of(fan.running().value());
    return state(
        fans.supply(fan -> flow.applyAsDouble(fan) * fan.counting().supplyShare()),
        fans.extract(fan -> flow.applyAsDouble(fan) * fan.counting().extractShare()),
        weatherPa,
        at);
  }

  private AirState state(List<Double> supply, List<Double> extract, double weatherPa, Case at) {
    List<Double> net = new ArrayList<>();
    List<Outside> outside = new ArrayList<>();
    for (int i = 0; i < supply.size(); i++) {
      net.add(supply.get(i) - extract.get(i));
      for (AirPath half : List.of(cracks.halfOfLeaks(i, at), cracks.halfOfVentilators(i, at))) {
        if (half.coefficient() > 0) {
          outside.add(new Outside(i, half, weatherPa));
          outside.add(new Outside(i, half, -weatherPa));
        }
      }
    }
    AirNetwork network = new AirNetwork(net, between(), outside);
    return new AirState(network, network.balanced(), supply, extract, weatherPa);
  }

  private List<Between> between() {
    return layout.ways().stream()
        .map(way -> new Between(way.from(), way.to(), path(way.areaM2())))
        .toList();
  }

  private AirPath path(double areaM2) {
    return AirPath.of(
        new Orifice(defaults.ventilators().discharge(), areaM2),
        defaults.ventilators().airDensity());
  }
}
