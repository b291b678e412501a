/**
 * The invented demo program: its true parameters, the generator that writes it as five partners
 * would send it, and the faults planted in it. Nothing here describes a real place, person, agency
 * or product.
 */
package pondtally.sample;
