package guildwood.materials;

import guildwood.kernel.Finding;
import java.util.List;

/** What is lost of the materials' records when a site is removed. */
public final class MaterialLosses {
  private MaterialLosses() {}

  /** One sentence where anything came or was laid; nothing otherwise. */
  public static List<Finding> of(MaterialRecords records, long siteId) {
    int came = records.deliveries(siteId).size();
    int laid = records.laid(siteId).size();
    return came + laid == 0 ? List.of() : List.of(Finding.of("materials.loss", "", came, laid));
  }
}
