package org.boleline.wood;

/** The two groups of trees that wood is sorted by; the words tell the family, not the hardness. */
public enum WoodGroup {
  /** Wood of broadleaved trees. */
  HARDWOOD,
  /** Wood of conifers. */
  SOFTWOOD
}
