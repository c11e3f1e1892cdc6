/** What the pages of all features share: rendering, forms, refusals, guards. */
package guildwood.web;
