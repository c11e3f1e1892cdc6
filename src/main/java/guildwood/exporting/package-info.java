/** Takes the library, or what is chosen of it, out of the program: tables, workbooks, data packages. */
package guildwood.exporting;
