/** Reads people's table files row by row: text with any separator, XLSX and ODS; refuses the rest with a sentence. */
package guildwood.importing.exchange;
