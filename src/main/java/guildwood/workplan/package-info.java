/** From a plan to work: which plants come from where, what is to be done in which order and when, and what fits into today's hours. */
package guildwood.workplan;
