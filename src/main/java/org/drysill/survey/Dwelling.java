package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The home as a whole.
 *
 * @param address address or property reference
 * @param type what kind of home
 * @param built year of construction
 * @param jurisdiction the ventilation rule set that applies, or a file with one
 * @param climate a reference climate, a weather file or your own monthly table
 * @param floorArea internal floor area of all storeys
 * @param volume internal air volume
 * @param envelopeArea area of the envelope, lowest floor included, for air permeability
 * @param storeys number of storeys of the home
 * @param bedrooms number of bedrooms
 * @param occupants who lives there, by number only
 * @param vulnerableOccupants infants, elderly, asthma, weak immunity: yes, no or unknown; no
 *     details
 * @param tenure owner-occupied, private rented or social rented
 * @param airtightness air leakage of the envelope
 * @param shelter how much wind the home gets
 * @param heating main heating
 * @param combustionAppliances everything in the home that burns fuel
 * @param construction what the home is made of, and hazards known of it
 * @param latitude latitude, north positive
 * @param longitude longitude, east positive
 */
public record Dwelling(
    @Renamed(Renamed.As.ADDRESS)
        @Key(about = "Address or property reference", example = "4 Sample Terrace")
        Optional<String> address,
    @Key(about = "What kind of home", example = "mid-terrace house") Optional<DwellingType> type,
    @Key(
            about = "Year of construction",
            min = 1000,
            max = 2100,
            low = 1700,
            high = 2030,
            example = "1931")
        Optional<Integer> built,
    @Key(about = "The ventilation rule set that applies, or a file with one", example = "england")
        Jurisdiction jurisdiction,
    @Key(
            about = "A reference climate, a weather file or your own monthly table",
            example = "uk-midlands")
        Optional<ClimateChoice> climate,
    @Key(
            about = "Internal floor area of all storeys",
            dimension = Dimension.AREA,
            unit = "m2",
            min = 5,
            max = 5000,
            low = 12,
            high = 600,
            example = "84 m2")
        Quantity floorArea,
    @Key(
            about = "Internal air volume",
            dimension = Dimension.VOLUME,
            unit = "m3",
            min = 10,
            max = 20000,
            low = 25,
            high = 2000,
            example = "202 m3")
        Optional<Quantity> volume,
    @Key(
            about = "Area of the envelope, lowest floor included, for air permeability",
            dimension = Dimension.AREA,
            unit = "m2",
            min = 10,
            max = 20000,
            example = "190 m2")
        Optional<Quantity> envelopeArea,
    @Key(about = "Number of storeys of the home", min = 1, max = 10, high = 4, example = "2")
        Optional<Integer> storeys,
    @Key(about = "Number of bedrooms", min = 0, max = 30, high = 8, example = "3")
        Optional<Integer> bedrooms,
    @Key(about = "Who lives there, by number only") Optional<Occupants> occupants,
    @Key(
            about = "Infants, elderly, asthma, weak immunity: yes, no or unknown; no details",
            example = "unknown")
        Optional<YesNo> vulnerableOccupants,
    @Key(about = "Owner-occupied, private rented or social rented", example = "owner-occupied")
        Optional<Tenure> tenure,
    @Key(about = "Air leakage of the envelope") Optional<Airtightness> airtightness,
    @Key(about = "How much wind the home gets", example = "normal") Optional<Shelter> shelter,
    @Key(about = "Main heating") Optional<Heating> heating,
    @Key(about = "Everything in the home that burns fuel")
        List<CombustionAppliance> combustionAppliances,
    @Key(about = "What the home is made of, and hazards known of it")
        Optional<Construction> construction,
    @Key(
            about = "Latitude, north positive",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = -90,
            max = 90,
            example = "52.5")
        Optional<Quantity> latitude,
    @Key(
            about = "Longitude, east positive",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = -180,
            max = 180,
            example = "-1.9")
        Optional<Quantity> longitude) {
  /** Copies the lists. */
  public Dwelling {
    combustionAppliances = List.copyOf(combustionAppliances);
  }
}
