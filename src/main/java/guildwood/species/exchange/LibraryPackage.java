package guildwood.species.exchange;

import guildwood.kernel.Finding;
import guildwood.species.LibraryContents;
import java.util.List;

/**
 * A library as a data package holds it.
 *
 * @param remarks what a person should know, though it keeps nothing out
 */
public record LibraryPackage(LibraryContents contents, List<Finding> remarks) {
  public LibraryPackage {
    remarks = List.copyOf(remarks);
  }
}
