package guildwood.bed.survey.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.survey.SurveySheet;
import guildwood.web.Address;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import java.util.OptionalLong;

/** What a survey is of: a bed, or a site as a whole. */
record Ground(Site site, Optional<Bed> bed) {

  /** The ground named in an address that begins with /beds/{id} or /sites/{id}; 404 where there is none. */
  static Ground of(Context ctx, Sites sites, Beds beds) {
    long id = Address.id(ctx);
    return ctx.path().startsWith("/beds/")
        ? ofBed(beds.find(id).orElseThrow(NotFoundResponse::new), sites)
        : new Ground(sites.find(id).orElseThrow(NotFoundResponse::new), Optional.empty());
  }

  /** The ground of a kept survey; 404 where it went in this moment. */
  static Ground of(SurveySheet sheet, Sites sites, Beds beds) {
    return sheet.bedId().isPresent()
        ? ofBed(beds.find(sheet.bedId().getAsLong()).orElseThrow(NotFoundResponse::new), sites)
        : new Ground(sites.find(sheet.siteId()).orElseThrow(NotFoundResponse::new), Optional.empty());
  }

  private static Ground ofBed(Bed bed, Sites sites) {
    return new Ground(sites.find(bed.siteId()).orElseThrow(NotFoundResponse::new), Optional.of(bed));
  }

  public String name() {
    return bed.map(Bed::name).orElse(site.name());
  }

  public String path() {
    return bed.map(b -> "/beds/" + b.id()).orElse("/sites/" + site.id());
  }

  /** For templates, which cannot ask an Optional. */
  public boolean isBed() {
    return bed.isPresent();
  }

  public String siteName() {
    return site.name();
  }

  public String sitePath() {
    return "/sites/" + site.id();
  }

  OptionalLong bedId() {
    return bed.isPresent() ? OptionalLong.of(bed.get().id()) : OptionalLong.empty();
  }
}
