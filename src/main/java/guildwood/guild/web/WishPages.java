package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Change;
import guildwood.guild.Easing;
import guildwood.guild.GuildRule;
import guildwood.guild.PlantsFrom;
import guildwood.guild.Rules;
import guildwood.guild.StartingWishes;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.kernel.Finding;
import guildwood.species.CautionKind;
import guildwood.species.Species;
import guildwood.species.Trait;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What the owner asks of a bed's guild, and what they allow. */
public final class WishPages implements Routes {
  private final Pages pages;
  private final Desk desk;
  private final Drafts drafts;

  public WishPages(Pages pages, Desk desk, Drafts drafts) {
    this.pages = pages;
    this.desk = desk;
    this.drafts = drafts;
  }

  /** One thing that can be wished for; {@code share} where a share of it is. */
  public record WishRow(String key, String label, boolean share) {}

  /** One kind of wish; {@code open} where anything of it is wished or refused. */
  public record WishGroup(String kind, boolean open, List<WishRow> rows) {}

  /** A species to choose from. */
  public record Choice(String id, String name) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/wishes", this::ask, Access.OWNER);
    routes.post("/beds/{bed}/wishes", this::keep, Access.OWNER);
  }

  private void ask(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    List<Wish> wishes = start(ctx.queryParam("start")).map(StartingWishes::wishes).orElse(plan.wishes());
    Optional<Change.EaseRule> eased = eased(ctx, plan.rules());
    Map<String, String> values = WishForm.fill(wishes, eased.map(Change.EaseRule::rules).orElse(plan.rules()));
    values.put("guild", GuildCode.of(GuildCode.read(Objects.requireNonNullElse(ctx.queryParam("guild"), ""))));
    GuildWords words = new GuildWords(pages.messages(), plan.library(), Units.of(ctx));
    Map<String, Object> model = model(ctx, plan, Form.blank(values, pages.messages()));
    model.put("eased", eased.map(words::change).orElse(""));
    pages.show(ctx, "guild/wishes", model);
  }

  /** The easing that the address asks to have filled in; a rule nobody can ease is a page that does not exist. */
  private static Optional<Change.EaseRule> eased(Context ctx, Rules rules) {
    String asked = ctx.queryParam("ease");
    if (asked == null) {
      return Optional.empty();
    }
    String detail = Objects.requireNonNullElse(ctx.queryParam("to"), "");
    GuildRule rule = Arrays.stream(GuildRule.values()).filter(r -> r.key().equals(asked)).findFirst()
        .orElseThrow(NotFoundResponse::new);
    Rules eased = Easing.of(rules, rule, detail).orElseThrow(NotFoundResponse::new);
    return Optional.of(new Change.EaseRule(rule, detail, eased));
  }

  private void keep(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    Form form = Form.read(ctx, pages.messages());
    if (!form.ticked("whole")) {
      // Cut short on the way, or not ours: what is missing must not count as no longer wished.
      Form kept = Form.blank(WishForm.fill(plan.wishes(), plan.rules()), pages.messages());
      kept.refuse(Finding.of("wishes.not-whole", ""));
      pages.refuse(ctx, "guild/wishes", model(ctx, plan, kept));
      return;
    }
    List<Wish> wishes = WishForm.wishes(form);
    Optional<Rules> rules = WishForm.rules(form, plan);
    if (rules.isEmpty()) {
      pages.refuse(ctx, "guild/wishes", model(ctx, plan, form));
      return;
    }
    desk.guilds().keep(plan.bed().id(), wishes, rules.get());
    if (form.value("do").equals("draft")) {
      Bench next = Bench.take(ctx, desk, drafts, pages.messages(), GuildCode.read(form.value("guild")), "");
      pages.goOn(ctx, "/beds/" + next.bedId() + "/guild/edit", Finding.of("done.wishes-kept-and-taken", "", wishes.size()));
      return;
    }
    pages.goOn(ctx, "/beds/" + plan.bed().id() + "/guild", Finding.of("done.wishes-kept", "", wishes.size()));
  }

  private static Optional<StartingWishes> start(String key) {
    return Arrays.stream(StartingWishes.values()).filter(s -> s.key().equals(key)).findFirst();
  }

  private Map<String, Object> model(Context ctx, BedPlan plan, Form form) {
    GuildWords words = new GuildWords(pages.messages(), plan.library(), Units.of(ctx));
    List<WishGroup> groups = new ArrayList<>();
    for (WishKind kind : WishKind.values()) {
      List<WishRow> rows = rows(kind, words);
      boolean open = kind == WishKind.FUNCTION || rows.stream().anyMatch(r -> !form.value("wish." + r.key()).isEmpty()
          || !form.messageOf("weight." + r.key()).isEmpty() || !form.messageOf("share." + r.key()).isEmpty());
      groups.add(new WishGroup(kind.key(), open, rows));
    }
    Map<String, Object> model = new HashMap<>();
    model.put("eased", "");
    model.put("form", form);
    model.put("bed", plan.bed());
    model.put("site", plan.site());
    model.put("groups", groups);
    model.put("starts", Arrays.stream(StartingWishes.values()).map(StartingWishes::key).toList());
    model.put("cautions", Arrays.stream(CautionKind.values()).map(CautionKind::key).toList());
    model.put("plantsFrom", Arrays.stream(PlantsFrom.values()).map(PlantsFrom::key).toList());
    model.put("regions", Trait.NATIVITY.items());
    model.put("banned", chosen(plan, form, "ban."));
    model.put("pinned", chosen(plan, form, "pin."));
    model.put("choices", choices(plan));
    return model;
  }

  private List<WishRow> rows(WishKind kind, GuildWords words) {
    return kind == WishKind.GROUND
        ? List.of(new WishRow(kind.key(), pages.messages().say("wishes.ground"), true))
        : kind.items().stream().map(item ->
            new WishRow(WishForm.field(kind, item), words.wish(new Wish(kind, item, false, 1)), false)).toList();
  }

  private static List<Choice> chosen(BedPlan plan, Form form, String prefix) {
    return form.names(prefix).stream()
        .flatMap(id -> plan.library().find(id).stream()).map(s -> new Choice(s.id(), s.name())).toList();
  }

  static List<Choice> choices(BedPlan plan) {
    return plan.library().species().stream()
        .sorted(Comparator.comparing(Species::name, String.CASE_INSENSITIVE_ORDER))
        .map(s -> new Choice(s.id(), s.name() + " (" + s.scientificName() + ")")).toList();
  }
}
