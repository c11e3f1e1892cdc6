package guildwood.exporting.web;

/**
 * Something that can be taken away, for the page that lists it all. Each feature names its own; the program puts
 * them together.
 *
 * @param titleKey message key of its name
 * @param helpKey message key of a sentence that says what it is
 * @param of what it is of, such as the name of a bed; empty where there is only one
 * @param href where it is to be had: the file itself, or the page on which it is chosen
 */
public record Takeable(String titleKey, String helpKey, String of, String href) {}
