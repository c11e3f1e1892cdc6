/**
 * Narrowing a library down: facets with counts, free-text search and orders, all in memory. Three-valued
 * throughout: yes, no, not known. No web, no storage.
 */
package guildwood.choosing;
