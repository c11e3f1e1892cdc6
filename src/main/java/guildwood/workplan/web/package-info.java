/** Pages about work: the season, what to do now, plants to get and to raise, settings, calendar. */
package guildwood.workplan.web;
