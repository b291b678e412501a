# Base R only (4.2.2): Rscript watersheds.R rewrites gamma_poisson.csv, gamma_poisson_counties.csv, funnel_limits.csv,
# dispersion.csv and sample_size.csv beside scotland_lip_cancer.csv.
options(digits = 15)
num <- function(x) ifelse(is.na(x), "", sprintf("%.15g", x))
out <- function(d, file) { d[] <- lapply(d, function(x) if (is.numeric(x)) num(x) else x)
  write.csv(d, file, row.names = FALSE, quote = FALSE) }
lip <- read.csv("scotland_lip_cancer.csv")

# Gamma-Poisson (Clayton & Kaldor 1987), maximum likelihood: the counts are negative binomial with size nu, mean E nu / alpha.
nll <- function(p, o, e) -sum(dnbinom(o, size = exp(p[1]), mu = e * exp(p[2]), log = TRUE))
fit <- function(o, e) {
  p <- optim(c(0, 0), nll, o = o, e = e, control = list(reltol = 1e-15, maxit = 10000))$par
  g <- function(p) { nu <- exp(p[1]); mu <- e * exp(p[2])          # score, solved by Newton's steps
    c(nu * sum(digamma(o + nu) - digamma(nu) + log(nu / (nu + mu)) + 1 - (o + nu) / (nu + mu)),
      sum(nu * (o - mu) / (nu + mu))) }
  for (i in 1:50) { h <- 1e-5; J <- cbind((g(p + c(h, 0)) - g(p - c(h, 0))) / (2 * h), (g(p + c(0, h)) - g(p - c(0, h))) / (2 * h))
    s <- solve(J, g(p)); p <- p - s; if (max(abs(s)) < 1e-14) break }
  c(nu = exp(p[1]), alpha = exp(p[1] - p[2]), loglik = -nll(p, o, e), poisson = sum(dpois(o, e * sum(o) / sum(e), log = TRUE)))
}
f <- fit(lip$observed, lip$expected)
even <- fit(c(0, 1, 0, 0, 2, 0, 0, 9), c(1, 2, .5, 3, 2.5, 1, .25, 3))
out(rbind(data.frame(data = "scotland_lip_cancer", t(f)), data.frame(data = "eight_groups", t(even))), "gamma_poisson.csv")
a <- lip$observed + f["nu"]; b <- lip$expected + f["alpha"]
out(data.frame(county = lip$county, posterior_mean = a / b, lower95 = qgamma(.025, a) / b, upper95 = qgamma(.975, a) / b), "gamma_poisson_counties.csv")

# Funnel limits: whole counts whose tail, itself included, has probability p or more; and Spiegelhalter 2005, appendix A.1.
one <- function(E, level) { p <- (1 - level) / 2; k <- 0:2000; F <- ppois(k, E); T <- ppois(k - 1, E, lower.tail = FALSE)
  r <- function(q) { i <- which(F > q)[1]; f1 <- F[i]; f0 <- if (i > 1) F[i - 1] else 0; (k[i] - (f1 - q) / (f1 - f0)) / E }
  data.frame(expected = E, level = level, lower = min(k[F >= p]) / E, upper = max(k[T >= p]) / E,
             lower_interpolated = max(0, r(p)), upper_interpolated = max(0, r(1 - p))) }
g <- expand.grid(E = c(.01, .3, 1, 2.5, 7, 20, 88.66, 400), level = c(.95, .998))
out(do.call(rbind, Map(one, g$E, g$level)), "funnel_limits.csv")

z <- sort((lip$observed - lip$expected) / sqrt(lip$expected)); n <- length(z); k <- floor(n / 10)
w <- pmin(pmax(z, z[k + 1]), z[n - k]); out(data.frame(data = "scotland_lip_cancer", groups = n, phi = sum(w^2) / n,
  p = pchisq(sum(w^2), n, lower.tail = FALSE)), "dispersion.csv")

# Schoenfeld 1983.
s <- expand.grid(hazard_ratio = c(.5, .75, 1.5, 2, 3), share = c(.5, .3), power = c(.8, .9)); s$level <- .95
s$failures <- (qnorm(.975) + qnorm(s$power))^2 / (s$share * (1 - s$share) * log(s$hazard_ratio)^2)
out(s, "sample_size.csv")
