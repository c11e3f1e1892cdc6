package guildwood.siteplan;

import guildwood.kernel.Finding;
import java.util.List;

/** What was found in a file with a plan. */
public record PlanFile(List<FoundShape> found, List<LeftOut> leftOut) {
  public PlanFile {
    found = List.copyOf(found);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Something that cannot be drawn on the plan.
   *
   * @param feature which one of the file, the first is 1
   * @param name empty where the file gives none
   */
  public record LeftOut(int feature, String name, Finding why) {}
}
