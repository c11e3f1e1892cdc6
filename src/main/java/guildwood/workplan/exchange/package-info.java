/** Work as files: calendars (RFC 5545) and the shopping list. */
package guildwood.workplan.exchange;
