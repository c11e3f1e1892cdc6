package guildwood.site.survey;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;

/** The surveys as they are kept. Every change is one transaction: all of it, or nothing. */
public interface SurveyStore {
  /** The surveys of a site and of all its beds, the latest first. */
  List<SurveySheet> ofSite(long siteId);

  /** The surveys of one bed, the latest first. */
  List<SurveySheet> ofBed(long bedId);

  Optional<SurveySheet> find(long id);

  /** Keeps a new survey, whatever its id says, and returns the id it got; empty where its site or bed is gone. */
  OptionalLong add(SurveySheet sheet);

  /**
   * Changes a survey as it stands at this moment and returns what it became; empty where there is none. A
   * survey stays with its site or bed.
   */
  Optional<SurveySheet> change(long id, UnaryOperator<SurveySheet> change);

  /** Removes a survey; false where there is none. */
  boolean remove(long id);
}
