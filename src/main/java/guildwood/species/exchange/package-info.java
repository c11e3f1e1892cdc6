/** Files about species, in and out: the library that comes with the program, and tables of species. */
package guildwood.species.exchange;
