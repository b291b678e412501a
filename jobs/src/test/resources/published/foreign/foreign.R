# Classic survival data sets as rows of a program, and what R gives on them.
#
#   Rscript foreign.R          # rewrites *.csv beside this file
#
# units.csv     set, unit, cluster, group (a pipe type), stratum, entry, exit, outcome
#               (0 censored, 1 and 2 two causes of failure, 9 retired); times are days as given,
#               or in the unit named below, whole numbers
# curves.csv    survfit(Surv(entry, exit, failed) ~ group, conf.type = "log-log"), event times only
# medians.csv   first time with the curve at or below one half; quantile(..., 0.5) for its limits
# tests.csv     survdiff(Surv ~ group), survdiff(Surv ~ group + strata(stratum)), cuminc()$Tests
# hazards.csv   coxph(Surv ~ group, ties = "efron", cluster = cluster), and with strata(stratum)
# fits.csv      survreg(Surv ~ 1, dist), one group at a time; loglik in days
# incidence.csv survfit(Surv(exit, factor(outcome)) ~ group)
# later.csv     further visits of units that fail again; repeats.csv survfit(..., id = id): cumhaz, std.chaz
suppressMessages({library(survival); library(cmprsk)})
pipes <- c("dual 12 in", "single 12 in", "dual 15 in", "single 10 in")
unit <- function(set, group, exit, outcome, entry = 0, stratum = 1, cluster = seq_along(exit)) {
  d <- data.frame(set, cluster = as.integer(factor(cluster)), group = as.integer(factor(group)),
                  stratum = as.integer(factor(stratum)), entry, exit, outcome)
  d <- d[complete.cases(d) & d$exit > d$entry, ]
  d$unit <- seq_len(nrow(d)); d$group <- pipes[d$group]; d
}
p <- pbc
sets <- list(
  with(lung, unit("lung", sex, time, status - 1, stratum = ifelse(ph.ecog == 3, 2, ph.ecog))),
  with(ovarian, unit("ovarian", rx, futime, fustat, stratum = resid.ds)),
  with(kidney, unit("kidney", sex, time, status, cluster = id)),
  with(rats, unit("rats", rx, time, status, stratum = sex, cluster = litter)),
  with(colon[colon$etype == 2, ], unit("colon", rx, time, status, stratum = node4)),
  with(p, unit("pbc", trt, time, c(0, 9, 1)[status + 1], stratum = stage)),
  with(mgus, unit("mgus", sex, futime, death)),
  with(mgus2, unit("mgus2", sex, ifelse(pstat == 1, ptime, futime),
                   ifelse(pstat == 1, 1, 9 * death))),
  # half days doubled; two stretches of a patient are two units of one cluster
  with(heart, unit("heart", transplant, 2 * stop, event, entry = 2 * start, stratum = surgery,
                   cluster = id)),
  with(aml, unit("aml", x, time, status)),
  with(bladder[bladder$enum == 1, ], unit("bladder", rx, stop, event)),
  # first infection; later ones are in later.csv
  with(cgd0, unit("cgd", treat, ifelse(is.na(etime1), futime, etime1), as.integer(!is.na(etime1)))),
  # hundredths of a month
  with(retinopathy, unit("retinopathy", trt, round(100 * futime), status, stratum = type,
                         cluster = id)),
  with(myeloid, unit("myeloid", trt, futime, death, stratum = sex)),
  # age in weeks; entry late, at diagnosis
  with(mgus, unit("mgus_age", sex, round(age * 52.18 + futime / 7), death, entry = round(age * 52.18))),
  with(transplant, unit("transplant", abo, futime,
       c(censored = 0, death = 1, ltx = 9, withdraw = 2)[as.character(event)], stratum = sex)))
names(sets) <- sapply(sets, function(d) d$set[1])
g <- function(x) ifelse(is.na(x), "", sprintf("%.15g", x))
out <- list(curves = NULL, medians = NULL, tests = NULL, hazards = NULL, fits = NULL, incidence = NULL,
            repeats = NULL, later = NULL)
put <- function(name, ...) out[[name]] <<- rbind(out[[name]], data.frame(..., stringsAsFactors = FALSE))
for (set in names(sets)) {
  d <- sets[[set]]
  d$failed <- d$outcome %in% 1:8
  late <- any(d$entry > 0)
  s <- if (late) with(d, Surv(entry, exit, failed)) else with(d, Surv(exit, failed))
  for (grp in unique(d$group)) {
    i <- d$group == grp
    f <- survfit(s[i] ~ 1, conf.type = "log-log")
    e <- f$n.event > 0
    put("curves", set, group = grp, time = g(f$time[e]), at_risk = g(f$n.risk[e]),
        events = g(f$n.event[e]), survival = g(f$surv[e]), std_error = g(f$std.err[e] * f$surv[e]),
        lower = g(f$lower[e]), upper = g(f$upper[e]))
    q <- quantile(f, 0.5)
    # R takes the middle of a stretch where the curve is one half; the text-books its beginning
    m <- if (any(f$surv <= 0.5 + 1e-9)) min(f$time[f$surv <= 0.5 + 1e-9]) else NA
    put("medians", set, group = grp, median = g(m), lower = g(q$lower), upper = g(q$upper))
    if (!late && sum(d$failed[i]) > 0) for (dist in c("weibull", "exponential")) {
      r <- survreg(Surv(d$exit[i], d$failed[i]) ~ 1, dist = dist, control = list(rel.tolerance = 1e-12))
      put("fits", set, group = grp, distribution = dist, shape = g(if (dist == "weibull") 1 / r$scale else NA),
          scale = g(exp(r$coef[1])), loglik = g(r$loglik[1]))
    }
  }
  strata <- length(unique(d$stratum)) > 1
  if (!late) {
    t <- survdiff(Surv(exit, failed) ~ group, d)
    put("tests", set, test = "log-rank", strata = "", statistic = g(t$chisq), df = length(t$n) - 1)
    if (strata) {
      t <- survdiff(Surv(exit, failed) ~ group + strata(stratum), d)
      put("tests", set, test = "log-rank", strata = "watershed", statistic = g(t$chisq), df = length(t$n) - 1)
    }
  } else {
    # survdiff takes no late entry: the score test with exact hypergeometric variance is coxph's
    # for Breslow ties only without ties; it is left to the hazard model
  }
  for (m in c("pipe", if (strata) "pipe stratified by watershed")) {
    ref <- names(sort(-table(d$group)))[1]
    n <- table(d$group); ref <- sort(names(n)[n == max(n)])[1]
    d$g2 <- relevel(factor(d$group), ref = ref)
    fm <- if (m == "pipe") s ~ g2 else s ~ g2 + strata(stratum)
    c1 <- coxph(fm, d, ties = "efron", cluster = cluster, control = coxph.control(eps = 1e-12, iter.max = 50))
    c0 <- coxph(fm, d, ties = "efron", control = coxph.control(eps = 1e-12, iter.max = 50))
    z <- tryCatch(cox.zph(c0, transform = "km")$table, error = function(e) NULL)
    k <- summary(c1)$coefficients
    put("hazards", set, model = m, level = sub("^g2", "", rownames(k)), reference = ref,
        hazard_ratio = g(k[, "exp(coef)"]), model_se = g(k[, "se(coef)"]), robust_se = g(k[, "robust se"]),
        loglik = g(c1$loglik[2]), concordance = g(c1$concordance["concordance"]),
        proportionality_p = g(if (is.null(z)) NA else z["GLOBAL", "p"]))
  }
  kinds <- setdiff(unique(d$outcome), 0)
  if (length(kinds) > 1) {
    d$ev <- factor(d$outcome, c(0, sort(kinds)))
    for (grp in unique(d$group)) {
      f <- survfit(Surv(exit, ev) ~ 1, d[d$group == grp, ])
      for (kind in kinds) {
        col <- which(f$states == as.character(kind))
        e <- f$n.event[, col] > 0
        put("incidence", set, group = grp, outcome = kind, time = g(f$time[e]),
            incidence = g(f$pstate[e, col]), std_error = g(f$std.err[e, col]))
      }
    }
    t <- cuminc(d$exit, d$outcome, d$group, cencode = 0)$Tests
    for (kind in kinds) put("tests", set, test = paste("gray", kind), strata = "",
        statistic = g(t[as.character(kind), "stat"]), df = t[as.character(kind), "df"])
  }
}
for (grp in 1:2) {
  f <- survfit(Surv(tstart, tstop, status) ~ 1, cgd, id = id, subset = as.integer(treat) == grp)
  e <- f$n.event > 0
  put("repeats", set = "cgd", group = pipes[grp], time = g(f$time[e]), at_risk = g(f$n.risk[e]),
      mean = g(f$cumhaz[e]), std_error = g(f$std.chaz[e]))
}
for (i in seq_len(nrow(cgd0))) {
  days <- na.omit(unlist(cgd0[i, paste0("etime", 2:7)]))
  end <- cgd0$futime[i]
  put("later", set = "cgd", unit = i, day = c(days, if (!end %in% unlist(cgd0[i, paste0("etime", 1:7)])) end),
      condition = c(rep("failed", length(days)),
                    if (!end %in% unlist(cgd0[i, paste0("etime", 1:7)])) "working"))
}
units <- do.call(rbind, sets)[, c("set", "unit", "cluster", "group", "stratum", "entry", "exit", "outcome")]
write.csv(units, "units.csv", row.names = FALSE, quote = FALSE)
for (n in names(out)) write.csv(out[[n]], paste0(n, ".csv"), row.names = FALSE, quote = FALSE)
cat(R.version.string, as.character(packageVersion("survival")), "\n")
