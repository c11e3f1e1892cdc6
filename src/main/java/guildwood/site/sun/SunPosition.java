package guildwood.site.sun;

/** Where the sun's centre stands: azimuth clockwise from north and elevation over the level horizon, degrees. */
public record SunPosition(double azimuthDegrees, double elevationDegrees) {}
