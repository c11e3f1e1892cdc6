# Lays out the open community tables that OpenTablesReferenceCheck reads, from the R packages vegan, ade4 and labdsv:
#   Rscript src/test/r/open-tables.R FOLDER
#   mvn test -Dtest=OpenTablesReferenceCheck -DargLine=-Dguildwood.vegetation-tables=FOLDER
suppressMessages({library(vegan); library(ade4); library(labdsv)})
setwd(commandArgs(trailingOnly = TRUE)[1])
lay <- function(name, species, places) {
  write.csv(species, paste0(name, "_spe.csv"))
  write.csv(places, paste0(name, "_env.csv"))
}
data(dune, dune.env, varespec, varechem, mite, mite.env, BCI, BCI.env, package = "vegan")
data(mafragh, aravo, doubs, piosphere, friday87, macroloire, vegtf, jv73, trichometeo, package = "ade4")
data(bryceveg, brycesite, package = "labdsv")
lay("dune", dune, dune.env)
lay("vare", varespec, varechem)
lay("mite", mite, mite.env)
lay("maf", mafragh$flo, mafragh$env)
lay("arv", aravo$spe, aravo$env)
lay("doubs", doubs$fish, doubs$env)
lay("bry", bryceveg, brycesite)
lay("pio", piosphere$veg, piosphere$env)
lay("fri", friday87$fau, friday87$mil)
lay("mac", t(macroloire$fau), macroloire$envir)
lay("vtf", vegtf$veg, vegtf$xy)
lay("jv", jv73$poi, jv73$phychi)
lay("tri", trichometeo$fau, trichometeo$meteo)
lay("bci", BCI, BCI.env)
