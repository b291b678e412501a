# The core of the job as a careful R user would write it, to compare speeds: Rscript peer.R PROGRAM OUT
# data.table and survival; no row account, no checks, no interval estimate, no bootstrap, no report.
suppressPackageStartupMessages({library(data.table); library(survival)})
a <- commandArgs(TRUE); dir <- a[1]; out <- a[2]; dir.create(out, FALSE, TRUE); setDTthreads(2)
rd <- function(t, cc) rbindlist(lapply(Sys.glob(file.path(dir, "*", paste0(t, ".csv"))), fread, colClasses = cc))
site <- rd("sites", list(character = c("site_id", "watershed")))
dev <- rd("installs", list(character = c("device_id", "site_id", "pipe_wall"), IDate = "installed_on"))
mat <- rd("materials", list(character = c("device_id", "item"), IDate = "purchased_on", numeric = "total_cost_usd"))
vis <- rd("revisits", list(character = c("device_id", "condition", "action"), IDate = "visited_on", numeric = c("hours", "cost_usd")))
cpi <- data.table(year = 2005:2024, index = c(195.292, 201.592, 207.342, 215.303, 214.537, 218.056, 224.939, 229.594, 232.957, 236.736, 237.017, 240.007, 245.120, 251.107, 255.657, 258.811, 270.970, 292.655, 304.702, 313.689))
dev <- merge(dev, site, by = "site_id"); dev[, pipe := paste(pipe_wall, pipe_diameter_in, "in")]
real <- function(usd, day) usd * 313.689 / cpi$index[match(year(day), cpi$year)]
build <- mat[, .(build = sum(real(total_cost_usd, purchased_on))), by = device_id]
upkeep <- vis[, .(upkeep = sum(real(cost_usd + 32 * hours, visited_on)), last = max(visited_on)), by = device_id]
failed <- vis[condition == "failed", .(first = min(visited_on), failures = .N), by = device_id]
ended <- vis[condition == "retired", .(ended = min(visited_on)), by = device_id]
for (x in list(build, upkeep, failed, ended)) dev <- merge(dev, x, by = "device_id", all.x = TRUE)
dev <- dev[!is.na(last)]
dev[, end := pmin(first, ended, last, na.rm = TRUE)][, `:=`(event = !is.na(first) & first == end, time = as.integer(end - installed_on), years = as.numeric(last - installed_on) / 365.25)]
dev[is.na(failures), failures := 0L]
km <- survfit(Surv(time, event) ~ pipe, dev, conf.type = "log-log"); s <- summary(km, times = 365.25 * c(1, 3, 5), extend = TRUE)
fwrite(data.table(group = rep(names(km$strata), km$strata), time = km$time, n = km$n.risk, d = km$n.event, s = km$surv, lo = km$lower, hi = km$upper), file.path(out, "curves.csv"))
fwrite(as.data.table(summary(coxph(Surv(time, event) ~ pipe + strata(setting), dev))$coefficients, keep.rownames = TRUE), file.path(out, "hazards.csv"))
for (g in c("pipe", "watershed")) {
  r <- dev[, .(devices = .N, failures = sum(failures), years = sum(years), build = sum(build, na.rm = TRUE), upkeep = sum(upkeep, na.rm = TRUE), acres = sum(wetland_acres_before[!duplicated(site_id)])), by = g]
  r[, `:=`(rate = 100 * failures / years, lo = 100 * qchisq(.025, 2 * failures) / 2 / years, hi = 100 * qchisq(.975, 2 * failures + 2) / 2 / years)]
  fwrite(r, file.path(out, paste0("rates_", g, ".csv")))
}
