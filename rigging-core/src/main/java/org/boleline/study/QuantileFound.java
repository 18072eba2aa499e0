package org.boleline.study;

/**
 * A quantile of a reading, with what the number of samples leaves open.
 *
 * @param share the share of samples that stays below
 * @param value the figure: the sample of that rank
 * @param least lower bound with the confidence of the study, by order statistics; none if the
 *     samples are too few for one
 * @param most upper bound, in the same way
 * @param confidenceShare how surely the quantile lies between the bounds, at least as asked (RNG-3)
 * @param standardError standard error from the independent scrambles (RNG-4), of the kind of the
 *     value; none if a scramble has no number
 */
public record QuantileFound(
    double share,
    Figure value,
    Found least,
    Found most,
    double confidenceShare,
    Found standardError) {}
