package guildwood.importing.web;

import guildwood.species.SpeciesRecords;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Uploads;
import io.javalin.config.RoutesConfig;
import java.util.List;

/** All pages of the import. */
public final class ImportRoutes implements Routes {
  private final List<Routes> all;

  public ImportRoutes(Pages pages, Uploads uploads, ImportDesk desk, SpeciesRecords records) {
    ColumnPages columns = new ColumnPages(pages, desk);
    ReviewPages review = new ReviewPages(pages, desk);
    all = List.of(new ImportPages(pages, desk, uploads), new SheetPages(pages, desk), columns, new MappingPages(pages, desk, uploads, columns),
        review, new DecisionPages(pages, desk, review), new RejectedRoute(pages.messages(), desk), new BringPages(pages, desk),
        new RunPages(pages, desk), new PackagePages(pages, desk, records));
  }

  @Override
  public void addTo(RoutesConfig routes) {
    all.forEach(r -> r.addTo(routes));
  }
}
