/** The owner's species library: traits, statements with their sources, and how written values are read. */
package guildwood.species;
