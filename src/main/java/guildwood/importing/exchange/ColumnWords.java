package guildwood.importing.exchange;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ColumnUnit;
import guildwood.importing.Meaning;
import guildwood.species.Trait;
import guildwood.species.web.ValueWords;
import guildwood.web.Messages;
import guildwood.web.Units;

/** Says what a column means. */
final class ColumnWords {
  private final Messages messages;
  private final ValueWords words;

  ColumnWords(Messages messages) {
    this.messages = messages;
    this.words = new ValueWords(messages, Units.METRIC);
  }

  String meaning(ColumnMapping column) {
    Meaning meaning = column.meaning();
    String about = meaning.trait().map(trait -> topic(trait, meaning.item())).orElse("");
    String said = messages.say("import.meaning." + meaning.kind().key(), about, meaning.word());
    return column.unit() == ColumnUnit.AS_WRITTEN ? said
        : messages.say("import.command.with-unit", said, messages.say("import.unit." + column.unit().key()));
  }

  private String topic(Trait trait, String item) {
    return item.isEmpty() ? messages.say("trait." + trait.key()) : words.topic(trait, item);
  }
}
