package guildwood.sharing.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Guilds;
import guildwood.guild.SavedGuild;
import guildwood.guild.web.Desk;
import guildwood.kernel.Finding;
import guildwood.sharing.QrCode;
import guildwood.sharing.ShareLink;
import guildwood.sharing.ShareLinks;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Tokens;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** The owner's side of sharing: giving out links and withdrawing them. */
public final class SharePages implements Routes {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE.withZone(ZoneOffset.UTC);

  private final Pages pages;
  private final Desk desk;
  private final ShareLinks links;
  private final Clock clock;
  private final Supplier<String> address;

  /** @param address how others reach the pages, without a slash at the end */
  public SharePages(Pages pages, Desk desk, ShareLinks links, Clock clock, Supplier<String> address) {
    this.pages = pages;
    this.desk = desk;
    this.links = links;
    this.clock = clock;
    this.address = address;
  }

  /** A link in the list: {@code state} is works, expired or revoked. */
  public record LinkRow(long id, String label, String created, String expires, String state) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/share", this::show, Access.OWNER);
    routes.post("/beds/{bed}/share", this::give, Access.OWNER);
    routes.post("/beds/{bed}/share/{link}/revoke", this::revoke, Access.OWNER);
  }

  private void show(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    Form form = Form.blank(Map.of("days", "180"), pages.messages());
    pages.show(ctx, "sharing/share", model(plan, saved(plan), form));
  }

  private void give(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    SavedGuild guild = saved(plan);
    Form form = Form.read(ctx, pages.messages());
    String label = form.text("label", ShareLink.LONGEST_LABEL);
    OptionalInt days = form.wholeNumber("days", 1, ShareLink.MOST_DAYS);
    if (form.isRefused()) {
      pages.refuse(ctx, "sharing/share", model(plan, guild, form));
      return;
    }
    Instant now = clock.instant();
    Optional<Instant> expires = days.isPresent() ? Optional.of(now.plus(Duration.ofDays(days.getAsInt()))) : Optional.empty();
    String token = Tokens.fresh();
    links.add(guild.id(), Tokens.hash(token), label, now, expires);
    // Shown in this answer and never again: no redirect, which would have to carry it.
    Map<String, Object> model = model(plan, guild, Form.blank(Map.of("days", "180"), pages.messages()));
    String link = address.get() + "/shared/" + token;
    model.put("link", link);
    model.put("qr", QrCode.of(link));
    pages.show(ctx, "sharing/share", model);
  }

  private void revoke(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    String link = ctx.pathParam("link");
    if (!link.matches("\\d{1,18}") || !links.revoke(saved(plan).id(), Long.parseLong(link))) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/beds/" + plan.bed().id() + "/share", Finding.of("done.link-revoked", ""));
  }

  private SavedGuild saved(BedPlan plan) {
    Guilds guilds = desk.guilds();
    return guilds.saved(plan.bed().id()).orElseThrow(NotFoundResponse::new);
  }

  private Map<String, Object> model(BedPlan plan, SavedGuild guild, Form form) {
    Instant now = clock.instant();
    List<LinkRow> rows = links.ofGuild(guild.id()).stream().map(link -> new LinkRow(link.id(), link.label(),
        DAY.format(link.createdAt()), link.expiresAt().map(DAY::format).orElse("–"),
        link.revoked() ? "revoked" : link.works(now) ? "works" : "expired")).toList();
    Map<String, Object> model = new HashMap<>();
    model.put("bed", plan.bed());
    model.put("site", plan.site());
    model.put("guildName", guild.name());
    model.put("form", form);
    model.put("links", rows);
    model.put("link", "");
    return model;
  }
}
