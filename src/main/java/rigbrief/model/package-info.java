/** Pure published formulas: speed, power, air, heat, noise and link, a sub-package each. */
package rigbrief.model;
