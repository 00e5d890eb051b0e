# Fits of split times by R's nls that tests/engine/sprint checks against.
#
#   Rscript tests/reference/make_sprint_fits.R        (Debian: r-base-core)
#
# Prints them; they stand in tests/engine/sprint/reference_fit_test.cpp. Lambert's W by Halley's steps: R has none.

lambertW <- function(x) {
  w <- ifelse(x > -0.25, x, -1 + sqrt(pmax(2 * (1 + exp(1) * x), 0)))
  for (i in 1:60) {
    e <- exp(w)
    f <- w * e - x
    step <- f / (e * (w + 1) - (w + 2) * f / (2 * w + 2))
    step[!is.finite(step)] <- 0
    w <- w - step
  }
  w
}
timeTo <- function(d, vmax, tau) {
  c <- 1 + d / (vmax * tau)
  tau * (c + lambertW(-exp(-c)))
}
say <- function(name, fit) {
  found <- summary(fit)$coefficients
  cat(name, "\n")
  print(cbind(format(found[, 1], digits = 12), format(found[, 2], digits = 12)), quote = FALSE)
  cat("  deviation", format(summary(fit)$sigma, digits = 12), "\n")
}
tight <- nls.control(maxiter = 500, tol = 1e-6)

cat(R.version.string, "\n")
# Invented splits with reading errors of a few ms.
d <- c(5, 10, 15, 20, 30, 40)
t <- c(1.318, 2.037, 2.654, 3.228, 4.309, 5.349)
say("six splits, clock from the first movement", nls(t ~ timeTo(d, vmax, tau), start = list(vmax = 9, tau = 1.2), control = tight))
say("six splits, offset free",
    nls(t ~ offset + timeTo(d, vmax, tau), start = list(vmax = 9, tau = 1.2, offset = 0.1), control = tight))
# Men's 100 m final, Berlin 2009, splits at 10 m (Graubner R, Nixdorf E, New Stud Athl 2011;26(1/2):19-53).
d <- seq(10, 100, 10)
t <- c(1.89, 2.88, 3.78, 4.64, 5.47, 6.29, 7.10, 7.92, 8.75, 9.58)
say("Berlin, reaction 0.146 known, all splits",
    nls(t ~ 0.146 + timeTo(d, vmax, tau), start = list(vmax = 12, tau = 1.2), control = tight))
say("Berlin, offset free, all splits",
    nls(t ~ offset + timeTo(d, vmax, tau), start = list(vmax = 12, tau = 1.2, offset = 0.1), control = tight))
