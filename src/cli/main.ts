#!/usr/bin/env node
import { Command } from 'commander';
import { vetCommand } from './vet.js';

const program = new Command('sparebud').description('May I do this, to this tree, here, on this day?').addCommand(vetCommand());

await program.parseAsync();
