/** Scientific names as people write them: read, compared and looked up without ever merging two plants silently. */
package guildwood.species.names;
