/** The plan of a site: what lies where, traced over a picture or drawn on blank metre paper. */
package guildwood.siteplan;
