# Fits a straight line to each chain in a loop, as `lm` is meant to be used, and by its bare engine. Processor time of the loops alone: neither
# R's start nor the reading of the file.
files <- commandArgs(trailingOnly = TRUE)
data <- read.csv(files[1])
chains <- split(data, data$chain)

crossings <- numeric(length(chains))
slopes <- numeric(length(chains))
processor_seconds <- function(loop) sum(system.time(loop)[c("user.self", "sys.self")])
lm_seconds <- processor_seconds(for (i in seq_along(chains)) {
  b <- coef(lm(elongation ~ hours, data = chains[[i]]))
  slopes[i] <- b[2]
  crossings[i] <- (3 - b[1]) / b[2]
})

bare_seconds <- processor_seconds(for (chain in chains) {
  .lm.fit(cbind(1, chain$hours), chain$elongation)$coefficients
})

write.table(data.frame(names(chains), format(slopes, digits = 17), format(crossings, digits = 17)), files[2],
  sep = ",", row.names = FALSE, col.names = FALSE, quote = FALSE)
cat(lm_seconds, bare_seconds, sep = " ")
