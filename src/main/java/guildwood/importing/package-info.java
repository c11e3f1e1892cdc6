/** Brings people's own tables into the library: read, mapped by example, reviewed, kept or undone as one step. */
package guildwood.importing;
