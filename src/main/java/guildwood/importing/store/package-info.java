/** Imports, their drafts and saved mappings in the database. */
package guildwood.importing.store;
