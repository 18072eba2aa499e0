package org.boleline.picture;

/** Three numbers in the plan's axes: metres of a place or a movement, or newtons of a force. */
record Place(double x, double y, double z) {
  static Place of(double[] numbers) {
    return new Place(numbers[0], numbers[1], numbers[2]);
  }

  Place plus(Place other) {
    return new Place(x + other.x, y + other.y, z + other.z);
  }

  Place minus(Place other) {
    return new Place(x - other.x, y - other.y, z - other.z);
  }

  Place times(double factor) {
    return new Place(factor * x, factor * y, factor * z);
  }

  double length() {
    return Math.sqrt(x * x + y * y + z * z);
  }
}
