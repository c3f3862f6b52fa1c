package org.drysill.cli;

final class Main {
  private Main() {}

  public static void main(String[] args) {}
}
