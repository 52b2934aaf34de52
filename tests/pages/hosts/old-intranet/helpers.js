/* Helpers of the house, written when languages had fewer of their own: they hang on everything, and show up in every loop. */
Array.prototype.first = function () { return this[0]; };
Array.prototype.contains = function (value) { return this.indexOf(value) >= 0; };
Array.prototype.remove = function (value) { this.splice(this.indexOf(value), 1); return this; };
Array.prototype.each = function (what) { for (var i = 0; i < this.length; i++) what(this[i], i); return this; };
String.prototype.strip = function () { return this.replace(/^\s+|\s+$/g, ''); };
String.prototype.capitalize = function () { return this.charAt(0).toUpperCase() + this.substring(1).toLowerCase(); };
Function.prototype.delay = function (ms) { return setTimeout(this, ms); };
Number.prototype.pad = function (width) { var text = String(this); while (text.length < width) text = '0' + text; return text; };
Object.prototype.keysOf = function () { var found = []; for (var name in this) found.push(name); return found; };
window.$ = function (id) { return document.getElementById(id); };
window.html = 'page'; window.css = 'house'; window.register = 1; window.define = null; window.exports = {}; window.module = undefined; window.name = 'form12'; window.status = 'ready';
