package guildwood.siteplan;

import java.util.Optional;

/** What lies under the plans: paper and pictures, as they are kept. Every change is one transaction. */
public interface PlanSheets {
  Optional<Paper> paper(long siteId);

  /** Keeps the paper of a site; false where the site is gone. */
  boolean keep(long siteId, Paper paper);

  /** Where the picture of a site lies; empty where it has none. */
  Optional<PicturePlace> picturePlace(long siteId);

  Optional<PlanPicture> picture(long siteId);

  /** Keeps a picture in the place of the one before; false where the site is gone. */
  boolean keep(long siteId, PlanPicture picture, PicturePlace place);

  /** Lays the picture elsewhere; false where there is none. */
  boolean place(long siteId, PicturePlace place);

  boolean removePicture(long siteId);
}
