/** The pages of the import: a file, its columns, what would happen, and what has happened. */
package guildwood.importing.web;
