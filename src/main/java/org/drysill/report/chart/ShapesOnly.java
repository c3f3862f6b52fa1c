package org.drysill.report.chart;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;

/**
 * Graphics for strokes and fills of shapes. Everything else that its type promises (text, images,
 * copies, pixels) is refused aloud: no chart needs it, and ignoring it would lose it unseen.
 */
abstract class ShapesOnly extends Graphics2D {
  private static UnsupportedOperationException refused() {
    return new UnsupportedOperationException("charts are drawn with strokes and fills alone");
  }

  @Override
  public void drawString(String text, int x, int y) {
    throw refused();
  }

  @Override
  public void drawString(String text, float x, float y) {
    throw refused();
  }

  @Override
  public void drawString(AttributedCharacterIterator text, int x, int y) {
    throw refused();
  }

  @Override
  public void drawString(AttributedCharacterIterator text, float x, float y) {
    throw refused();
  }

  @Override
  public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
    throw refused();
  }

  @Override
  public boolean drawImage(Image image, AffineTransform place, ImageObserver observer) {
    throw refused();
  }

  @Override
  public void drawImage(BufferedImage image, BufferedImageOp op, int x, int y) {
    throw refused();
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform place) {
    throw refused();
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform place) {
    throw refused();
  }

  @Override
  public boolean hit(Rectangle rectangle, Shape shape, boolean onStroke) {
    throw refused();
  }

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    throw refused();
  }

  @Override
  public void setComposite(Composite composite) {
    throw refused();
  }

  @Override
  public Composite getComposite() {
    throw refused();
  }

  @Override
  public void setRenderingHints(Map<?, ?> hints) {
    throw refused();
  }

  @Override
  public void addRenderingHints(Map<?, ?> hints) {
    throw refused();
  }

  @Override
  public RenderingHints getRenderingHints() {
    throw refused();
  }

  @Override
  public void shear(double x, double y) {
    throw refused();
  }

  @Override
  public void rotate(double angle) {
    throw refused();
  }

  @Override
  public void rotate(double angle, double x, double y) {
    throw refused();
  }

  @Override
  public void setBackground(Color color) {
    throw refused();
  }

  @Override
  public Color getBackground() {
    throw refused();
  }

  @Override
  public FontRenderContext getFontRenderContext() {
    throw refused();
  }

  @Override
  public Graphics create() {
    throw refused();
  }

  @Override
  public void setPaintMode() {
    throw refused();
  }

  @Override
  public void setXORMode(Color color) {
    throw refused();
  }

  @Override
  public Font getFont() {
    throw refused();
  }

  @Override
  public void setFont(Font font) {
    // XChart sets one even where it shows no text.
  }

  @Override
  public FontMetrics getFontMetrics(Font font) {
    throw refused();
  }

  @Override
  public void copyArea(int x, int y, int width, int height, int toX, int toY) {
    throw refused();
  }

  @Override
  public void drawLine(int x1, int y1, int x2, int y2) {
    throw refused();
  }

  @Override
  public void fillRect(int x, int y, int width, int height) {
    throw refused();
  }

  @Override
  public void clearRect(int x, int y, int width, int height) {
    throw refused();
  }

  @Override
  public void clipRect(int x, int y, int width, int height) {
    throw refused();
  }

  @Override
  public void setClip(int x, int y, int width, int height) {
    throw refused();
  }

  @Override
  public Rectangle getClipBounds() {
    throw refused();
  }

  @Override
  public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
    throw refused();
  }

  @Override
  public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
    throw refused();
  }

  @Override
  public void drawOval(int x, int y, int width, int height) {
    throw refused();
  }

  @Override
  public void fillOval(int x, int y, int width, int height) {
    throw refused();
  }

  @Override
  public void drawArc(int x, int y, int width, int height, int start, int angle) {
    throw refused();
  }

  @Override
  public void fillArc(int x, int y, int width, int height, int start, int angle) {
    throw refused();
  }

  @Override
  public void drawPolyline(int[] xs, int[] ys, int count) {
    throw refused();
  }

  @Override
  public void drawPolygon(int[] xs, int[] ys, int count) {
    throw refused();
  }

  @Override
  public void fillPolygon(int[] xs, int[] ys, int count) {
    throw refused();
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    throw refused();
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, ImageObserver observer) {
    throw refused();
  }

  @Override
  public boolean drawImage(Image image, int x, int y, Color color, ImageObserver observer) {
    throw refused();
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, Color color, ImageObserver observer) {
    throw refused();
  }

  @Override
  public boolean drawImage(
      Image image,
      int x1,
      int y1,
      int x2,
      int y2,
      int fromX1,
      int fromY1,
      int fromX2,
      int fromY2,
      ImageObserver observer) {
    throw refused();
  }

  @Override
  public boolean drawImage(
      Image image,
      int x1,
      int y1,
      int x2,
      int y2,
      int fromX1,
      int fromY1,
      int fromX2,
      int fromY2,
      Color color,
      ImageObserver observer) {
    throw refused();
  }

  @Override
  public void dispose() {
    // Nothing is held.
  }
}
