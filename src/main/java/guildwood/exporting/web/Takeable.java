package guildwood.exporting.web;

/**
 * Something that can be taken away, for the page that lists it all. Each feature names its own; the program puts
 * them together.
 *
 * @param titleKey message key of its name
 * @param helpKey message key of a sentence that says what it is
 * @param href where it is to be had: the file itself, or the page on which it is chosen
 */
public record Takeable(String titleKey, String helpKey, String href) {}
