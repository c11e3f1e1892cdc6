package guildwood.materials.web;

import guildwood.materials.Delivery;
import guildwood.materials.Laid;
import guildwood.materials.Material;
import guildwood.materials.Need;
import guildwood.materials.Share;
import guildwood.materials.SiteNeeds;
import guildwood.materials.SiteNeeds.Place;
import guildwood.materials.Volume;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Puts the materials of a site into words. */
final class MaterialViews {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private final SiteNeeds needs;
  private final Units units;
  private final Messages messages;
  private final MaterialWords words;

  MaterialViews(SiteNeeds needs, Units units, Messages messages) {
    this.needs = needs;
    this.units = units;
    this.messages = messages;
    this.words = new MaterialWords(messages, units);
  }

  MaterialView view() {
    List<MaterialView.LeftOut> leftOut = needs.places().stream().filter(place -> sharesOf(place).isEmpty())
        .map(place -> place.surface()).map(s -> new MaterialView.LeftOut(s.target().key(), s.name(), words.kind(s.target()))).toList();
    double minutes = needs.needs().stream().mapToDouble(needs::minutes).sum();
    return new MaterialView(headline(), rows(), leftOut, stock(), missing(), minutes > 0 ? words.time(minutes) : "", cautions());
  }

  List<MaterialView.Came> came(List<Delivery> deliveries) {
    return deliveries.stream()
        .map(d -> new MaterialView.Came(d.id(), d.on().format(DAY), words.of(d.material(), d.amount()), d.note())).toList();
  }

  List<MaterialView.Done> done(List<Laid> laid) {
    return laid.stream().map(l -> new MaterialView.Done(l.id(), l.on().format(DAY), l.name(), words.of(l.material(), l.amount()),
        elsewhere(l))).toList();
  }

  private String elsewhere(Laid laid) {
    double elsewhere = laid.amount() - laid.fromStock();
    return elsewhere < 1e-9 ? "" : messages.say("materials.laid.elsewhere", words.amount(laid.material(), elsewhere));
  }

  private List<Share> sharesOf(Place place) {
    return needs.shares().stream().filter(share -> share.need().target().equals(place.surface().target())).toList();
  }

  private String headline() {
    if (needs.shares().isEmpty()) {
      return messages.say("materials.headline.nothing");
    }
    Map<Share.State, Integer> counts = new EnumMap<>(Share.State.class);
    needs.shares().forEach(share -> counts.merge(share.state(), 1, Integer::sum));
    List<String> parts = counts.entrySet().stream()
        .map(e -> messages.say("materials.headline." + key(e.getKey()), e.getValue())).toList();
    return messages.say("materials.headline", String.join(", ", parts));
  }

  private List<MaterialView.Row> rows() {
    List<MaterialView.Row> rows = new ArrayList<>();
    for (int i = 0; i < needs.places().size(); i++) {
      boolean up = i > 0;
      boolean down = i + 1 < needs.places().size();
      for (Share share : sharesOf(needs.places().get(i))) {
        rows.add(row(share, needs.places().get(i), up, down));
        up = false;
        down = false;
      }
    }
    return rows;
  }

  private MaterialView.Row row(Share share, Place place, boolean up, boolean down) {
    Need need = share.need();
    Material material = need.material();
    String what = material.inSheets() ? words.name(material) : messages.say("materials.deep", words.name(material), words.depth(need.depthM()));
    int trunks = place.surface().trunks();
    String where = trunks == 0 ? units.area(need.areaM2()) : messages.say("materials.without-trunks", units.area(need.areaM2()), trunks);
    String laid = need.laid() == 0 ? "" : messages.say("materials.laid-so-far", words.amount(material, need.laid()));
    return new MaterialView.Row(need.key(), need.target().key(), need.name(), words.kind(need.target()), need.order(), up, down, what, where,
        words.amount(material, need.amount()), need.done() ? "" : words.trips(material, need.left(), needs.settings()), laid,
        need.done() ? "" : words.time(needs.minutes(need)), key(share.state()), enough(share, place), need.done());
  }

  private String enough(Share share, Place place) {
    Material material = share.need().material();
    return switch (share.state()) {
      case DONE -> "";
      case CAN_BE_FINISHED -> waitsForCard(share, place) ? messages.say("materials.enough.after-card") : "";
      case CAN_BE_BEGUN -> messages.say("materials.enough.part", words.amount(material, share.there()), words.amount(material, share.missing()));
      case NOTHING_THERE -> messages.say("materials.enough.none", words.amount(material, share.missing()));
    };
  }

  /** What belongs on card cannot be laid before it. */
  private boolean waitsForCard(Share share, Place place) {
    return sharesOf(place).stream().anyMatch(below -> below.need().material().inSheets() && !below.need().done() && below != share);
  }

  private List<MaterialView.Lying> stock() {
    return needs.stock().amounts().entrySet().stream().filter(e -> e.getValue() >= Volume.CLOSE_ENOUGH_M3).map(e -> {
      double spent = needs.shares().stream().filter(s -> s.need().material() == e.getKey()).mapToDouble(Share::there).sum();
      return new MaterialView.Lying(words.name(e.getKey()), words.amount(e.getKey(), e.getValue()),
          words.amount(e.getKey(), Math.max(0, e.getValue() - spent)));
    }).toList();
  }

  private List<MaterialView.Missing> missing() {
    return needs.missing().entrySet().stream().map(e -> new MaterialView.Missing(words.name(e.getKey()),
        words.amount(e.getKey(), e.getValue()), words.loads(e.getKey(), e.getValue(), needs.settings()),
        words.trips(e.getKey(), e.getValue(), needs.settings()), words.weight(e.getKey(), e.getValue()))).toList();
  }

  /** Only about what is in use here: what it does to nitrogen, dug in and lying on top. */
  private List<String> cautions() {
    return Arrays.stream(Material.values()).filter(material -> needs.needs().stream().anyMatch(need -> need.material() == material))
        .flatMap(material -> material.carbonToNitrogen().stream().map(ratio ->
            messages.say(material.tiesUpNitrogenDugIn() ? "materials.carbon.high" : "materials.carbon.low", words.name(material),
                ratio.width() == 0 ? Units.number(ratio.min(), 0) : Units.number(ratio.min(), 0) + " – " + Units.number(ratio.max(), 0))))
        .toList();
  }

  private static String key(Share.State state) {
    return state.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
