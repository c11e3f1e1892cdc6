package guildwood.choosing.web;

import guildwood.choosing.BedChoice;
import guildwood.choosing.BedFits;
import guildwood.choosing.CurrentIndex;
import guildwood.choosing.Outcome;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the library page shows under an address, all its pages together.
 *
 * @param species in the order in which the page shows them
 * @param isWhole whether that is every species in use
 * @param fits how they suit the bed, where one is chosen
 * @param notes what of the address was left out because it could not be read
 * @param address the shortest address of the library page that shows the same
 */
public record AddressedChoice(
    SpeciesLibrary library,
    List<Species> species,
    boolean isWhole,
    Optional<BedChoice> bed,
    Optional<BedFits> fits,
    List<Finding> notes,
    String address) {
  public AddressedChoice {
    species = List.copyOf(species);
    notes = List.copyOf(notes);
  }

  /** @param parameters of the address, as the library page takes them; names that mean nothing there are passed over */
  public static AddressedChoice of(Map<String, List<String>> parameters, CurrentIndex.State state, List<BedChoice> beds) {
    AddressReader.Read read = AddressReader.read(parameters, beds.stream().map(BedChoice::id).collect(Collectors.toSet()));
    LibraryAddress address = read.address().onPage(1);
    Optional<BedChoice> bed = beds.stream().filter(b -> address.bed().isPresent() && address.bed().getAsLong() == b.id()).findFirst();
    Optional<BedFits> fits = bed.map(state::fits);
    Outcome outcome = state.index().choose(address.query(), fits);
    List<Species> species = outcome.list(address.orderOrUsual(), 0, outcome.count()).stream().map(Outcome.Remaining::species).toList();
    return new AddressedChoice(state.library(), species, species.size() == outcome.total(), bed, fits, read.notes(), address.path());
  }

  /** The parameters of an address of the library page, or of its query alone; absent where it is none. */
  public static Optional<Map<String, List<String>>> parametersOf(String address) {
    return AddressReader.parameters(address.substring(address.indexOf('?') + 1));
  }

  /** Names of parameters that the library page does not know. */
  public static List<String> unknownNames(Map<String, List<String>> parameters) {
    return parameters.keySet().stream().filter(name -> !name.isEmpty() && !LibraryAddress.isParameter(name)).sorted().toList();
  }
}
